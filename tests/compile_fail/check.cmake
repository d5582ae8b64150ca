# SPDX-License-Identifier: GPL-3.0-or-later
#
# Compiles one source (syntax only) and holds the outcome against the source's
# own "// expect: " line: the word "compiles", or a regular expression that the
# compiler's message must match.
#   cmake -DSOURCE=x.cpp -DCOMPILER=c++ -DROOT=/path/to/tree -P check.cmake
file(STRINGS ${SOURCE} expectation REGEX "^// expect: ")
list(LENGTH expectation lines)
if(NOT lines EQUAL 1)
  message(FATAL_ERROR "${SOURCE} needs exactly one line '// expect: ...'")
endif()
string(REGEX REPLACE "^// expect: " "" expectation "${expectation}")

# Plain quotes in messages whatever the language of the machine.
set(ENV{LC_ALL} C)
execute_process(
  COMMAND ${COMPILER} -std=c++23 -fsyntax-only -I${ROOT} ${SOURCE}
  RESULT_VARIABLE failed
  OUTPUT_VARIABLE said
  ERROR_VARIABLE said)

if(expectation STREQUAL "compiles")
  if(failed)
    message(FATAL_ERROR "must compile, but:\n${said}")
  endif()
elseif(NOT failed)
  message(FATAL_ERROR "compiles, but must be refused with: ${expectation}")
elseif(NOT said MATCHES "error: [^\n]*(${expectation})")
  message(FATAL_ERROR "refused for another reason than: ${expectation}\n${said}")
endif()
