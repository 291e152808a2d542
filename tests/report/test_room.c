/* What of a piece of paper is taken. */
#include "report/svg/room.h"
#include "support/random.h"
#include "support/runner.h"

enum { BOXES = 60 };

static struct arena arena;

static void teardown(void)
{
	arena_clear(&arena);
}

static struct box box_mm(int left, int top, int right, int bottom)
{
	return (struct box){ left * NM_PER_MM, top * NM_PER_MM, right * NM_PER_MM,
		bottom * NM_PER_MM };
}

START_TEST(nothing_is_free_beyond_the_paper_or_where_something_is)
{
	struct room room = room_of(box_mm(10, 20, 110, 80), &arena);

	ck_assert(room_is_free(&room, box_mm(10, 20, 110, 80)));
	ck_assert(!room_is_free(&room, box_mm(9, 20, 20, 30)));
	ck_assert(!room_is_free(&room, box_mm(100, 70, 111, 80)));
	room_take(&room, box_mm(0, 0, 20, 30)); /* half of it beyond */
	ck_assert(!room_is_free(&room, box_mm(10, 20, 11, 21)));
	ck_assert(!room_is_free(&room, box_mm(19, 29, 40, 40)));
	ck_assert(room_is_free(&room, box_mm(20, 20, 40, 30)));
	ck_assert(room_is_free(&room, box_mm(10, 30, 20, 40)));
	room_take(&room, box_mm(200, 200, 300, 300));
	ck_assert(room_is_free(&room, box_mm(100, 70, 110, 80)));
}
END_TEST

START_TEST(paper_without_room_takes_nothing)
{
	struct room room = room_of(box_mm(10, 10, 10, 10), &arena);

	room_take(&room, box_mm(0, 0, 20, 20));
	ck_assert(!room_is_free(&room, box_mm(9, 9, 11, 11)));
}
END_TEST

static bool overlap(struct box a, struct box b)
{
	return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/* What is taken because it was free overlaps nothing, however it lies. */
START_TEST(boxes_that_are_taken_where_free_never_overlap)
{
	struct random random = { (uint64_t)_i };
	struct room room = room_of(box_mm(0, 0, 60, 60), &arena);
	struct box taken[BOXES];
	int count = 0;

	for (int i = 0; i < BOXES; i++) {
		struct at middle = { random_below(&random, 60000000),
			random_below(&random, 60000000) };
		struct box box = box_around(middle, random_between(&random, 1000, 9000000),
			random_between(&random, 1000, 9000000));

		if (!room_is_free(&room, box))
			continue;
		for (int j = 0; j < count; j++)
			ck_assert_msg(!overlap(box, taken[j]), "seed %d", _i);
		room_take(&room, box);
		taken[count++] = box;
	}
	ck_assert_int_gt(count, 3);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("room");
	TCase *room = suite_case(suite, "room");

	tcase_add_checked_fixture(room, NULL, teardown);
	tcase_add_test(room, nothing_is_free_beyond_the_paper_or_where_something_is);
	tcase_add_test(room, paper_without_room_takes_nothing);
	tcase_add_loop_test(room, boxes_that_are_taken_where_free_never_overlap, 0,
		runner_count(30, 2000));
	return suite;
}
