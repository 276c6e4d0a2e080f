// SPDX-License-Identifier: MIT
#pragma once
// Things by their names, which copies share until they are changed.

#include <cstddef>
#include <iterator>
#include <map>
#include <memory>
#include <string>
#include <utility>

namespace platewright {

/// As a `std::map` of names, in the order of the names; but a copy costs little however much its
/// values hold, since both have the same ones. It is a value all the same: what is changed in one
/// is changed in no other, and what is read from one stays until that name is changed in it.
template <class Value>
class ByName {
  using Kept = std::map<std::string, std::shared_ptr<const Value>>;

 public:
  /// Refers to the name and to what it stands for.
  struct Entry {
    const std::string& first;
    const Value& second;
  };

  class const_iterator {
   public:
    using iterator_category = std::input_iterator_tag;
    using value_type = Entry;
    using difference_type = std::ptrdiff_t;
    using reference = Entry;
    /// Holds what `->` looks into.
    struct pointer {
      Entry entry;
      const Entry* operator->() const { return &entry; }
    };

    explicit const_iterator(typename Kept::const_iterator at) : at_(at) {}
    Entry operator*() const { return {at_->first, *at_->second}; }
    pointer operator->() const { return {**this}; }
    const_iterator& operator++() {
      ++at_;
      return *this;
    }
    const_iterator operator++(int) { return const_iterator(at_++); }
    friend bool operator==(const const_iterator&, const const_iterator&) = default;

   private:
    typename Kept::const_iterator at_;
  };

  const_iterator begin() const { return const_iterator(kept_.begin()); }
  const_iterator end() const { return const_iterator(kept_.end()); }
  const_iterator find(const std::string& name) const { return const_iterator(kept_.find(name)); }
  std::size_t size() const { return kept_.size(); }
  bool empty() const { return kept_.empty(); }
  std::size_t count(const std::string& name) const { return kept_.count(name); }
  /// Throws `std::out_of_range` where there is none of the name.
  const Value& at(const std::string& name) const& { return *kept_.at(name); }
  const Value& at(const std::string&) && = delete;

  /// Adds what has a new name, and says whether the name was new.
  bool emplace(std::string name, Value value) {
    const auto [place, is_new] = kept_.try_emplace(std::move(name));
    if (is_new) place->second = std::make_shared<const Value>(std::move(value));
    return is_new;
  }
  void insert_or_assign(std::string name, Value value) {
    kept_.insert_or_assign(std::move(name), std::make_shared<const Value>(std::move(value)));
  }
  std::size_t erase(const std::string& name) { return kept_.erase(name); }

  /// Has `work` change what has the name; nothing is changed where it throws. Throws
  /// `std::out_of_range` where there is none of the name.
  template <class Work>
  void change(const std::string& name, Work&& work) {
    std::shared_ptr<const Value>& kept = kept_.at(name);
    auto own = std::make_shared<Value>(*kept);
    std::forward<Work>(work)(*own);
    kept = std::move(own);
  }

 private:
  Kept kept_;
};

}  // namespace platewright
