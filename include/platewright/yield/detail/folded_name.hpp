#pragma once
// Where the sheets of reasons look for it.

#include "platewright/problem/folded_name.hpp"
