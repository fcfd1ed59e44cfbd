// Tables of other trades, whose columns are not ours: first rows of data sets that come with R 4.2.2 (Debian
// r-base-core 4.2.2.20221110-2, r-cran-mass 7.3-58.2-1, r-cran-nlme 3.1.162-1, r-cran-survival 3.5-3-1), as
// write.csv(head(...), row.names = FALSE) prints them.
#include "audit/audit.hpp"
#include "engine/season/sheets.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace wetspell {
namespace {

struct Stranger {
  const char* name;
  const char* text;
};

const Stranger strangers[] = {
    {"airquality",
     "Ozone,Solar.R,Wind,Temp,Month,Day\n41,190,7.4,67,5,1\n36,118,8,72,5,2\n12,149,12.6,74,5,3\n"
     "18,313,11.5,62,5,4\n"},
    {"quakes", "lat,long,depth,mag,stations\n-20.42,181.62,562,4.8,41\n-20.62,181.03,650,4.2,15\n"
               "-26,184.1,42,5.4,43\n-17.97,181.66,626,4.1,19\n"},
    {"iris", "Sepal.Length,Sepal.Width,Petal.Length,Petal.Width,Species\n5.1,3.5,1.4,0.2,setosa\n"
             "4.9,3,1.4,0.2,setosa\n4.7,3.2,1.3,0.2,setosa\n4.6,3.1,1.5,0.2,setosa\n"},
    {"stackloss",
     "Air.Flow,Water.Temp,Acid.Conc.,stack.loss\n80,27,89,42\n80,27,88,37\n75,25,90,37\n62,24,87,28\n"},
    {"beaver1", "day,time,temp,activ\n346,840,36.33,0\n346,850,36.34,0\n346,900,36.35,0\n346,910,36.42,0\n"},
    {"attenu", "event,mag,station,dist,accel\n1,7,117,12,0.359\n2,7.4,1083,148,0.014\n2,7.4,1095,42,0.196\n"
               "2,7.4,283,85,0.135\n"},
    {"morley", "Expt,Run,Speed\n1,1,850\n1,2,740\n1,3,900\n1,4,1070\n"},
    {"pressure", "temperature,pressure\n0,2e-04\n20,0.0012\n40,0.006\n60,0.03\n"},
    {"rock", "area,peri,shape,perm\n4990,2791.9,0.0903296,6.3\n7002,3892.6,0.148622,6.3\n"},
    {"MASS_snails",
     "Species,Exposure,Rel.Hum,Temp,Deaths,N\nA,1,60,10,0,20\nA,1,60,15,0,20\nA,1,60,20,0,20\n"},
    {"MASS_crabs", "sp,sex,index,FL,RW,CL,CW,BD\nB,M,1,8.1,6.7,16.1,19,7\nB,M,2,8.8,7.7,18.1,20.8,7.4\n"},
    {"nlme_Soybean", "Plot,Variety,Year,Time,weight\n1988F1,F,1988,14,0.106\n1988F1,F,1988,21,0.261\n"},
    {"survival_lung", "inst,time,status,age,sex,ph.ecog,ph.karno,pat.karno,meal.cal,wt.loss\n"
                      "3,306,2,74,1,1,90,100,1175,NA\n3,455,2,68,1,0,90,90,1225,15\n"},
};

class Strangers : public ::testing::TestWithParam<Stranger> {};

TEST_P(Strangers, AreLeftAlone) {
  std::vector<Table> sheets;
  std::string text = GetParam().text;
  std::replace(text.begin(), text.end(), ',', '|');
  sheets.push_back(testing::sheet(GetParam().name, text));
  const std::size_t columns = sheets[0].columns();
  const Audit audit = wetspell::audit("data.csv", std::move(sheets), {nullptr, 46280});
  EXPECT_EQ(audit.rows.all(), 0u);
  EXPECT_TRUE(audit.findings.empty());
  ASSERT_EQ(audit.tables.size(), 1u);
  EXPECT_FALSE(audit.tables[0].kind) << audit.tables[0].reason;
  ASSERT_EQ(audit.tables[0].columns.size(), columns);
  for (const AuditedColumn& column : audit.tables[0].columns) {
    EXPECT_TRUE(column.mapping.open()) << column.mapping.heading;
    EXPECT_FALSE(column.mapping.reason.empty());
  }
}

INSTANTIATE_TEST_SUITE_P(R, Strangers, ::testing::ValuesIn(strangers),
                         [](const auto& each) { return std::string(each.param.name); });

} // namespace
} // namespace wetspell
