/* Letters of the sizes that blocks are sawn to. */
#include "report/text/sawn.h"
#include "support/runner.h"


START_TEST(letters_go_from_a_to_z_then_from_A_to_Z_then_there_is_none)
{
	static const char letters[] = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";

	for (int i = 0; i < SAWN_LETTERS; i++)
		ck_assert_int_eq(sawn_letter(i), letters[i]);
	ck_assert_uint_eq(sizeof letters - 1, SAWN_LETTERS);
	ck_assert_int_eq(sawn_letter(SAWN_LETTERS), '*');
	ck_assert_int_eq(sawn_letter(1000), '*');
}
END_TEST

START_TEST(sizes_are_each_once_the_longest_first_with_all_their_pieces)
{
	static const nm one[] = { 90, 40, 40 }, other[] = { 70, 40 };
	static const struct cut cuts[] = { { one, 3, 5 }, { other, 2, 1 } };
	const struct cutting cutting = { .cuts = cuts, .cut_count = 2 };
	static const struct batch expected[] = { { 90, 5 }, { 70, 1 }, { 40, 11 } };
	struct sawn sawn = sawn_make(&cutting);

	ck_assert_int_eq(sawn.count, 3);
	for (int i = 0; i < 3; i++) {
		ck_assert_int_eq(sawn.sizes[i].place, expected[i].place);
		ck_assert_int_eq(sawn.sizes[i].count, expected[i].count);
		ck_assert_int_eq(sawn_size(&sawn, expected[i].place), i);
	}
	ck_assert_int_eq(sawn_size(&sawn, 41), sawn.count);
	sawn_fini(&sawn);
}
END_TEST

/* Of a bed with a cap of the block's own size, and of a bed without joints. */
START_TEST(a_wall_and_its_cap_find_what_their_own_blocks_are_sawn_to)
{
	const struct size block = { 16, 8, 6 }, other = { 16, 8, 4 };
	const struct cutting list[] = {
		{ .use = USE_CAP, .block = block }, { .use = USE_WALL, .block = other },
		{ .use = USE_WALL, .block = block, .joint = 1 },
		{ .use = USE_WALL, .block = block },
	};
	struct all_sawn all = all_sawn_make(&(const struct cuttings){ list, 4 });
	const struct wall wall = { .block = block, .has_cap = true, .cap_block = block };

	ck_assert_ptr_eq(all_sawn_of(&all, &wall, USE_WALL)->cutting, &list[3]);
	ck_assert_ptr_eq(all_sawn_of(&all, &wall, USE_CAP)->cutting, &list[0]);
	all_sawn_fini(&all);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("sawn");
	TCase *sizes = suite_case(suite, "sizes");

	tcase_add_test(sizes, letters_go_from_a_to_z_then_from_A_to_Z_then_there_is_none);
	tcase_add_test(sizes, sizes_are_each_once_the_longest_first_with_all_their_pieces);
	tcase_add_test(sizes, a_wall_and_its_cap_find_what_their_own_blocks_are_sawn_to);
	return suite;
}
