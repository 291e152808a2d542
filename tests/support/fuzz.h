/* Each tests/fuzz/NAME.c defines this one function and is built twice: by `make fuzz` into a
 * fuzzer (clang's libFuzzer), and in `make check` with replay.c, which feeds it every file in
 * tests/fuzz/NAME/ and plots/, each as it stands and in slightly damaged copies. Words worth
 * trying may stand in tests/fuzz/NAME.dict.
 *
 * An input that a fuzzer found to break something goes into tests/fuzz/NAME/ with the repair.
 *
 * The function aborts (assert) where a claim is broken, and returns 0. The bytes end without a
 * NUL, in memory of exactly their size. */
#ifndef SUPPORT_FUZZ_H
#define SUPPORT_FUZZ_H

#include <stddef.h>
#include <stdint.h>

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t size);

#endif
