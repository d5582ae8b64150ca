// SPDX-License-Identifier: GPL-3.0-or-later
// Must not compile: a rise of 4 K is not a temperature of 4 K.
// expect: conversion from .*to non-scalar type|no viable conversion
#include "core/units/quantities.h"

using namespace ullage::units;

Temperature wrong() {
  Temperature t = kelvin_difference(4);
  return t;
}
