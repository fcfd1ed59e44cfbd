// Kendall's table of exact upper tails (Kendall 1975; Gilbert 1987, table A18, both from memory), in numbers
// by complete enumeration of all orders (for 4, 5 and 8: Python 3.11.7, itertools.permutations).
#include "measure/kendall.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

struct Entry {
  std::size_t n;
  std::int64_t s;
  double tail;
};

TEST(KendallTable, UpperTails) {
  for (const auto& [n, s, tail] :
       {Entry{4, 0, .62500},   Entry{4, 2, .37500},   Entry{4, 4, .16667},   Entry{4, 6, .04167},
        Entry{5, 0, .59167},   Entry{5, 2, .40833},   Entry{5, 4, .24167},   Entry{5, 6, .11667},
        Entry{5, 8, .04167},   Entry{5, 10, .00833},  Entry{6, 1, .50000},   Entry{6, 3, .35972},
        Entry{6, 5, .23472},   Entry{6, 7, .13611},   Entry{6, 9, .06806},   Entry{6, 11, .02778},
        Entry{6, 13, .00833},  Entry{6, 15, .00139},  Entry{7, 1, .50000},   Entry{7, 3, .38631},
        Entry{7, 5, .28095},   Entry{7, 7, .19067},   Entry{7, 9, .11944},   Entry{7, 11, .06806},
        Entry{7, 13, .03452},  Entry{7, 15, .01508},  Entry{7, 17, .00536},  Entry{7, 19, .00139},
        Entry{7, 21, .00020},  Entry{8, 0, .54757},   Entry{8, 4, .35977},   Entry{8, 8, .19938},
        Entry{8, 10, .13755},  Entry{8, 12, .08943},  Entry{8, 14, .05434},  Entry{8, 16, .03051},
        Entry{8, 18, .01558},  Entry{8, 20, .00707},  Entry{9, 8, .23835},   Entry{9, 12, .12976},
        Entry{9, 14, .09009},  Entry{9, 16, .05972},  Entry{9, 18, .03759},  Entry{9, 20, .02231},
        Entry{9, 24, .00633},  Entry{10, 11, .19036}, Entry{10, 15, .10819}, Entry{10, 17, .07787},
        Entry{10, 19, .05416}, Entry{10, 21, .03628}, Entry{10, 23, .02331}, Entry{10, 25, .01430},
        Entry{10, 27, .00833}}) {
    EXPECT_NEAR(kendall_upper_tail(n, s), tail, 0.5e-5) << "n " << n << ", s " << s;
  }
}

// EPA QA/G-9, small example (from memory): 5, 6, 11, 8, 10 give s = 6, p = .117 on one side.
TEST(KendallTable, FiveValuesOfQaG9) {
  const auto kendall = test::value_of(mann_kendall({{1, 2, 3, 4, 5}, {5, 6, 11, 8, 10}}));
  EXPECT_EQ(kendall.s, 6);
  EXPECT_NEAR(kendall.p / 2, .117, 0.0005);
}

// What the table says of few years: two-sided, three years reach 1/3 at best, four 1/12, five 1/60.
TEST(KendallTable, FewYearsSayLittle) {
  EXPECT_NEAR(test::value_of(mann_kendall({{1, 2, 3}, {1, 2, 3}})).p, 1.0 / 3, 1e-15);
  EXPECT_NEAR(test::value_of(mann_kendall({{1, 2, 3, 4}, {1, 2, 3, 4}})).p, 1.0 / 12, 1e-15);
  EXPECT_EQ(fewest_for(0.05), 5u);
  EXPECT_EQ(fewest_for(0.10), 4u);
}

} // namespace
} // namespace wetspell
