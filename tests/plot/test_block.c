/* Blocks hold the values and notes of a part of a plot. */
#include "plot/block.h"
#include "base/memory.h"
#include "support/details.h"
#include "support/runner.h"

START_TEST(a_block_gives_the_plots_value_or_the_default)
{
	struct block bed = { .kind = BLOCK_BED };

	ck_assert(!block_value(&bed, BED_COURSES)->set);
	ck_assert_int_eq(block_number(&bed, BED_COURSES), 3);
	ck_assert_int_eq(block_length(&bed, BED_MULCH), 2 * NM_PER_INCH);
	block_set(&bed, BED_COURSES, (struct value){ .set = true, .as.number = 5 });
	block_set(&bed, BED_MULCH, (struct value){ .set = true, .as.length = 7 });
	ck_assert(block_value(&bed, BED_COURSES)->set);
	ck_assert_int_eq(block_number(&bed, BED_COURSES), 5);
	ck_assert_int_eq(block_length(&bed, BED_MULCH), 7);
	ck_assert_int_eq(block_effective(&bed, BED_COURSES)->as.number, 5);
	block_set(&bed, BED_COURSES, (struct value){ .set = false });
	ck_assert_int_eq(block_number(&bed, BED_COURSES), 3);
	ck_assert_int_eq(block_length(&bed, BED_MULCH), 7);
	block_fini(&bed);
}
END_TEST

START_TEST(what_a_block_held_before_is_freed)
{
	struct block head = { .kind = BLOCK_HEAD };

	for (int i = 0; i < 3; i++)
		block_set(&head, HEAD_TITLE, (struct value){ .set = true,
			.as.text = memory_string("a title that a leak checker would miss") });
	notes_add(&head.notes, memory_string("a note"));
	block_fini(&head);
	ck_assert(block_is_empty(&head));
	ck_assert_int_eq(head.kind, BLOCK_HEAD);
}
END_TEST

START_TEST(a_block_is_empty_until_something_is_set_or_noted)
{
	struct block path = { .kind = BLOCK_PATH };

	ck_assert(block_is_empty(&path));
	block_set(&path, PATH_SURFACE, (struct value){ .set = true, .as.length = 0 });
	ck_assert(!block_is_empty(&path));
	block_set(&path, PATH_SURFACE, (struct value){ .set = false });
	ck_assert(block_is_empty(&path));
	notes_add(&path.notes, memory_string("laid in May"));
	ck_assert(!block_is_empty(&path));
	block_fini(&path);
}
END_TEST

START_TEST(a_copy_is_equal_and_shares_nothing)
{
	struct block bed = { .kind = BLOCK_BED }, copy;
	struct ground ground = { 5, 5, NULL };
	struct random random = { 7 };

	for (enum attribute a = block_first(BLOCK_BED); a <= block_last(BLOCK_BED); a++)
		block_set(&bed, a, value_at_random(&random, a, &ground));
	for (int i = 0; i < 20; i++)
		notes_add(&bed.notes, text_at_random(&random, 1, 9));
	copy = block_copy(&bed);
	ck_assert(block_equal(&bed, &copy));
	block_fini(&bed);
	ck_assert(!block_equal(&bed, &copy));
	ck_assert_uint_eq(copy.notes.count, 20);
	block_fini(&copy);
}
END_TEST

START_TEST(blocks_that_differ_anywhere_are_not_equal)
{
	struct block one = { .kind = BLOCK_PATH }, other = { .kind = BLOCK_LAWN };
	enum attribute last = block_last(BLOCK_PATH);

	ck_assert(!block_equal(&one, &other));
	other.kind = BLOCK_PATH;
	ck_assert(block_equal(&one, &other));
	block_set(&other, last, (struct value){ .set = true, .as.length = 1 });
	ck_assert(!block_equal(&one, &other));
	block_set(&one, last, (struct value){ .set = true, .as.length = 1 });
	ck_assert(block_equal(&one, &other));
	notes_add(&one.notes, memory_string("a"));
	ck_assert(!block_equal(&one, &other));
	notes_add(&other.notes, memory_string("b"));
	ck_assert(!block_equal(&one, &other));
	block_fini(&other);
	other = block_copy(&one);
	ck_assert(block_equal(&one, &other));
	notes_add(&one.notes, memory_string("a"));
	notes_add(&other.notes, memory_string("b"));
	ck_assert(!block_equal(&one, &other));
	block_fini(&one);
	block_fini(&other);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("block");
	TCase *block = suite_case(suite, "values and notes");

	tcase_add_test(block, a_block_gives_the_plots_value_or_the_default);
	tcase_add_test(block, what_a_block_held_before_is_freed);
	tcase_add_test(block, a_block_is_empty_until_something_is_set_or_noted);
	tcase_add_test(block, a_copy_is_equal_and_shares_nothing);
	tcase_add_test(block, blocks_that_differ_anywhere_are_not_equal);
	return suite;
}
