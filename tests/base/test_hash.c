/* The hash of base/hash.h against the values that are known for FNV-1a of 64 bits (Fowler, Noll and
 * Vo; the three here are from memory). */

#include "base/hash.h"
#include "support/runner.h"

START_TEST(known_texts_have_their_known_hashes)
{
	ck_assert_uint_eq(hash_bytes(HASH_EMPTY, "", 0), UINT64_C(0xcbf29ce484222325));
	ck_assert_uint_eq(hash_bytes(HASH_EMPTY, "a", 1), UINT64_C(0xaf63dc4c8601ec8c));
	ck_assert_uint_eq(hash_bytes(HASH_EMPTY, "foobar", 6), UINT64_C(0x85944171f73967e8));
}
END_TEST

START_TEST(a_text_may_be_hashed_in_parts)
{
	uint64_t parts = hash_bytes(hash_bytes(HASH_EMPTY, "foo", 3), "bar", 3);

	ck_assert_uint_eq(parts, hash_bytes(HASH_EMPTY, "foobar", 6));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("hash");
	TCase *all = suite_case(suite, "hash");

	tcase_add_test(all, known_texts_have_their_known_hashes);
	tcase_add_test(all, a_text_may_be_hashed_in_parts);
	return suite;
}
