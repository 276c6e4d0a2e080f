#pragma once
// A ladder walked down and up.

#include <string>
#include <vector>

#include "platewright/card/kitchen_view.hpp"
#include "platewright/card/sheet.hpp"
#include "platewright/yield/yield_answer.hpp"
#include "platewright/yield/yield_table.hpp"

namespace platewright {

/// The ladder's rungs with their sources, and the answers. `among` are the rows that the one used,
/// `name`, was chosen from; empty where nothing was to be chosen.
Sheet yield_sheet(const std::string& name, const YieldAnswer& answer, const KitchenView& view,
                  const std::vector<YieldRow>& among = {});

}  // namespace platewright
