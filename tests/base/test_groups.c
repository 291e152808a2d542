#include "support/runner.h"
#include "support/random.h"
#include "support/stopper.h"
#include "base/groups.h"

#include <stdlib.h>

static bool halves_are_alike(const void *a, const void *b, const void *context)
{
	int by = *(const int *)context;

	return *(const int *)a / by == *(const int *)b / by;
}

/* Few hashes, so that many items with one hash are not alike. */
static uint64_t hash_halves(const void *item, const void *context)
{
	int by = *(const int *)context;

	return (uint64_t)(*(const int *)item / by % 3);
}

static struct groups groups_by(const int *by, const int *items, int count)
{
	return groups_make(items, count, sizeof *items,
		&(struct alike){ halves_are_alike, hash_halves, by });
}

START_TEST(alike_items_are_grouped_by_first_member_and_members_grow)
{
	static const int items[] = { 9, 4, 8, 5, 1, 9 };
	static const int by = 2;
	struct groups groups = groups_by(&by, items, 6);

	ck_assert_int_eq(groups.count, 3);
	ck_assert_int_eq(groups.list[0].count, 3);
	ck_assert_int_eq(groups.list[0].members[0], 0);
	ck_assert_int_eq(groups.list[0].members[1], 2);
	ck_assert_int_eq(groups.list[0].members[2], 5);
	ck_assert_int_eq(groups.list[1].count, 2);
	ck_assert_int_eq(groups.list[1].members[0], 1);
	ck_assert_int_eq(groups.list[1].members[1], 3);
	ck_assert_int_eq(groups.list[2].count, 1);
	ck_assert_int_eq(groups.list[2].members[0], 4);
	groups_fini(&groups);
}
END_TEST

START_TEST(no_items_make_no_groups)
{
	static const int by = 1;
	struct groups groups = groups_by(&by, NULL, 0);

	ck_assert_int_eq(groups.count, 0);
	groups_fini(&groups);
}
END_TEST

START_TEST(every_item_is_in_one_group_with_its_like)
{
	enum { ITEMS = 2000, VALUES = 300 };
	struct random random = { 5 };
	int items[ITEMS], by = 1, seen[ITEMS] = { 0 };

	for (int i = 0; i < ITEMS; i++)
		items[i] = random_below(&random, VALUES);
	struct groups groups = groups_by(&by, items, ITEMS);

	for (int i = 0; i < groups.count; i++) {
		const struct group *group = &groups.list[i];

		ck_assert(i == 0 || groups.list[i - 1].members[0] < group->members[0]);
		for (int j = 0; j < group->count; j++) {
			ck_assert_int_eq(items[group->members[j]], items[group->members[0]]);
			ck_assert_int_eq(groups.of[group->members[j]], i);
			seen[group->members[j]]++;
		}
	}
	ck_assert_int_le(groups.count, VALUES);
	for (int i = 0; i < ITEMS; i++)
		ck_assert_int_eq(seen[i], 1);
	groups_fini(&groups);
}
END_TEST

/* The one list, then the other. */
START_TEST(of_two_lists_the_first_of_several_alike_goes_with_the_first)
{
	enum { ITEMS = 14, FIRST = 6, NONE = NO_PARTNER };
	static const int items[ITEMS] = { 9, 4, 8, 5, 12, 13, /* and */ 1, 9, 5, 8, 8, 9, 3, 2 };
	static const int wanted[ITEMS] = { 7, 8, 9, NONE, NONE, NONE, NONE, 0, 1, 2, NONE, NONE,
		NONE, NONE };
	static const int by = 2;
	struct groups groups = groups_by(&by, items, ITEMS);
	int *partners = groups_partners(&groups, FIRST);

	for (int i = 0; i < ITEMS; i++)
		ck_assert_msg(partners[i] == wanted[i], "%d goes with %d", i, partners[i]);
	free(partners);
	groups_fini(&groups);
}
END_TEST

/* Whatever is looked at before it is thrown away is there. */
START_TEST(it_can_be_stopped_at_any_ask)
{
	enum { ITEMS = 300 };
	int items[ITEMS], by = 1;
	struct stopper stopper;
	bool was_stopped = true;

	for (int i = 0; i < ITEMS; i++)
		items[i] = i * 7 % 100;
	for (int at = 1; was_stopped; at++) {
		struct groups groups;
		int *partners;

		stopper_begin(&stopper, at);
		groups = groups_by(&by, items, ITEMS);
		partners = groups_partners(&groups, ITEMS / 2);
		stopper_end();
		was_stopped = stopper.asks >= at;
		ck_assert_int_le(groups.item_count, ITEMS);
		for (int i = 0; i < groups.count; i++)
			for (int j = 0; j == 0 || j < groups.list[i].count; j++)
				ck_assert(groups.list[i].members[j] >= 0 &&
					groups.list[i].members[j] < groups.item_count);
		for (int i = 0; i < groups.item_count; i++)
			ck_assert(partners[i] >= NO_PARTNER && partners[i] < groups.item_count);
		free(partners);
		groups_fini(&groups);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("groups");
	TCase *groups = suite_case(suite, "groups");

	tcase_add_test(groups, alike_items_are_grouped_by_first_member_and_members_grow);
	tcase_add_test(groups, no_items_make_no_groups);
	tcase_add_test(groups, every_item_is_in_one_group_with_its_like);
	tcase_add_test(groups, of_two_lists_the_first_of_several_alike_goes_with_the_first);
	tcase_add_test(groups, it_can_be_stopped_at_any_ask);
	return suite;
}
