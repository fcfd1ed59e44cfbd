#pragma once
// The office's C++ names all begin with com::sun::star; its own sources shorten that to css, and so do we.

namespace com::sun::star {}
namespace css = com::sun::star;
