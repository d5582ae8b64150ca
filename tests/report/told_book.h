// SPDX-License-Identifier: GPL-3.0-or-later
//
// The book of book.h told, for tests of what is printed from it.
#pragma once

#include <gtest/gtest.h>

#include "tests/report/book.h"

namespace ullage::testing {

// Its journal, and the cellar as it then stands.
struct ToldBook : ::testing::Test {
  Book book;
  Journal journal = book.journal();
  CellarStatus now = Replay(journal, book.s.calendar).status(Book::now());
  report::Speaker speaker = book.speaker();

  // After more was logged.
  void tell_anew() {
    journal = book.journal();
    now = Replay(journal, book.s.calendar).status(Book::now());
  }
};

}  // namespace ullage::testing
