/* Where sawn pieces go: all that is said, summed up, and as it stands. */
#include "report/text/sawn_places.h"
#include "support/beds.h"
#include "support/garden.h"
#include "support/runner.h"
#include "support/shapes.h"

#include <string.h>

static struct garden garden;
static struct arena words;
static struct sawn sawn;
static struct text *places;

static void forget(void)
{
	if (places) {
		sawn_places_free(places, &sawn);
		sawn_fini(&sawn);
	}
	places = NULL;
	arena_clear(&words);
}

static void teardown(void)
{
	forget();
	garden_fini(&garden);
}

static void tell(int cutting)
{
	const struct report report = { .words = &words, .plot = &garden.plot,
		.takeoff = &garden.takeoff, .units = plot_units(&garden.plot) };

	sawn = sawn_make(&garden.takeoff.cuttings.list[cutting]);
	places = sawn_places(&report, &sawn);
}

/* As on the page, without its ties. */
static void is_told(int size, const char *expected)
{
	for (char *c = places[size].bytes; *c; c++)
		if (*c == '\t')
			*c = ' ';
	ck_assert_str_eq(places[size].bytes, expected);
}

START_TEST(alike_beds_are_told_together_with_the_pieces_of_each)
{
	garden_file(&garden, "plots/court.plot");
	garden_count(&garden);
	tell(0);
	ck_assert_int_eq(sawn.count, 1);
	is_told(0, "each of B1 and B2: 2 each on side 1 even, side 2 odd, side 3 even, side 4 odd");
}
END_TEST

START_TEST(a_cap_is_told_without_a_course)
{
	garden_file(&garden, "plots/rope-walk.plot");
	garden_count(&garden);
	tell(1);
	ck_assert_int_eq(sawn.count, 4);
	is_told(0, "each of B1 and 3 like it: 1 each on side 3, side 5");
	is_told(3, "each of B1 and 3 like it: 1 each on side 1, 2 each on side 4, side 6");
}
END_TEST

START_TEST(holes_are_named_with_their_sides)
{
	garden_file(&garden, "plots/great-court.plot");
	garden_count(&garden);
	tell(2);
	is_told(1, "each of B3 and 47 like it: 2 each on hole 1 side 1 odd, hole 1 side 2 even, "
		"hole 1 side 3 odd, hole 1 side 4 even");
}
END_TEST

/* Beds of a width of their own each, all with pieces of 8 in. */
START_TEST(of_many_sheets_the_first_are_named_and_the_other_beds_counted)
{
	garden_rows(&garden, (const char *[]){
		"bbbb.bbbbbb.bbbbbbb.bbbbbbbb.bbbbbbbbb.bbbbbbbb",
		"bbbb.bbbbbb.bbbbbbb.bbbbbbbb.bbbbbbbbb.bbbbbbbb",
		"bbbb.bbbbbb.bbbbbbb.bbbbbbbb.bbbbbbbbb.bbbbbbbb",
		"bbbb.bbbbbb.bbbbbbb.bbbbbbbb.bbbbbbbbb.bbbbbbbb", NULL });
	plot_set(&garden.plot, 'b', BED_BLOCK, "12 in x 8 in x 4 in");
	plot_set(&garden.plot, 'b', BED_COURSES, "2");
	garden_count(&garden);
	tell(0);
	ck_assert_int_eq(sawn.sizes[0].place, 8 * NM_PER_INCH);
#define SIDES(one, other) "1\teach on side\t1\t" one ", side\t2\t" other ", side\t3\t" one \
	", side\t4\t" other
	ck_assert_str_eq(places[0].bytes, "B1: " SIDES("even", "odd") "; B2: " SIDES("even", "odd")
		"; B3: " SIDES("odd", "even") " and 3\tmore\tbeds");
}
END_TEST

/* ---- By law ---------------------------------------------------------------------------------- */

static int64_t number(const char **c)
{
	int64_t value = 0;

	for (; (**c >= '0' && **c <= '9') || **c == ','; ++*c)
		if (**c != ',')
			value = value * 10 + (**c - '0');
	return value;
}

/* "B1 and 47 like it", "B1 and B2", "B1, B2 and B3", up to a colon. */
static int64_t beds_named(const char *c)
{
	int64_t beds = 0;

	for (; *c != ':'; c++) {
		if (*c == 'B')
			beds++;
		else if (strncmp(c, "and ", 4) == 0 && c[4] != 'B') {
			c += 4;
			beds += number(&c);
		}
	}
	return beds;
}

/* The pieces of all beds that are named, and how many beds are not. */
static int64_t pieces_told(const char *c, int64_t *more_beds)
{
	int64_t sum = 0, beds = 1, each = 0;

	*more_beds = 0;
	for (bool begins = true; *c; begins = strncmp(c++, "; ", 2) == 0) {
		const char *behind = c;
		int64_t value = 0;

		if (begins) {
			c += *c == ' ';
			beds = strncmp(c, "each of ", 8) == 0 ? beds_named(c + 8) : 1;
			c += strcspn(c, ":");
		} else if (strncmp(c, "side\t", 5) == 0) {
			sum += beds * each;
		} else if (*c >= '1' && *c <= '9' && c[-1] == ' ') {
			value = number(&behind);
		}
		if (strncmp(behind, "\teach on ", 9) == 0 && value > 0)
			each = value;
		else if (strncmp(behind, " on other sides", 15) == 0 && value > 0)
			sum += beds * value;
		else if (strncmp(behind, "\tmore\tbed", 9) == 0 && value > 0)
			*more_beds = value;
		else
			ck_assert_msg(value == 0, "%s", c);
		if (value > 0)
			c = behind - 1;
	}
	return sum;
}

START_TEST(of_many_sides_the_first_are_named_and_the_other_pieces_counted)
{
	int with_more = 0;

	garden = (struct garden){ .arena = ARENA_EMPTY };
	shape_comb(&garden.plot, 64);
	plot_set(&garden.plot, 'b', BED_BLOCK, "11 in x 5 in x 4 in");
	plot_set(&garden.plot, 'b', BED_COURSES, "5");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.walls.count, 1);
	tell(0);
	for (int i = 0; i < sawn.count; i++) {
		int64_t more_beds;

		ck_assert_int_eq(pieces_told(places[i].bytes, &more_beds), sawn.sizes[i].count);
		with_more += strstr(places[i].bytes, " on other sides") != NULL;
	}
	ck_assert_int_gt(with_more, 0);
}
END_TEST

START_TEST(all_that_is_told_of_a_size_adds_up_to_its_pieces)
{
	int counted = 0;

	for (int seed = 1; seed <= runner_count(60, 1000); seed++) {
		struct random random = { (uint64_t)seed };
		struct size block = beds_random_block(&random);

		garden = (struct garden){ .arena = ARENA_EMPTY };
		if (seed % 2)
			beds_at_random(&garden.plot, &random, random_between(&random, 4, 9), 3);
		else
			beds_formal(&garden.plot, &random, random_between(&random, 4, 9));
		beds_set_block(&garden.plot, block.along, block.across, block.up);
		beds_set_courses(&garden.plot, random_between(&random, 1, 5));
		garden_count(&garden);
		if (garden.takeoff.cuttings.count > 0)
			tell(0);
		for (int i = 0; places && i < sawn.count; i++) {
			int64_t more, told = pieces_told(places[i].bytes, &more);

			if (more == 0)
				ck_assert_msg(told == sawn.sizes[i].count,
					"seed %d: %lld of %lld: %s", seed, (long long)told,
					(long long)sawn.sizes[i].count, places[i].bytes);
			else
				ck_assert_int_lt(told, sawn.sizes[i].count);
			counted += more == 0;
		}
		teardown();
	}
	garden_rectangle(&garden, 'b', 8, 4);
	ck_assert_int_ge(counted, 50);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("sawn_places");
	TCase *told = suite_case(suite, "told"), *law = suite_case(suite, "law");

	tcase_add_checked_fixture(told, NULL, teardown);
	tcase_add_test(told, alike_beds_are_told_together_with_the_pieces_of_each);
	tcase_add_test(told, a_cap_is_told_without_a_course);
	tcase_add_test(told, holes_are_named_with_their_sides);
	tcase_add_test(told, of_many_sheets_the_first_are_named_and_the_other_beds_counted);

	tcase_add_checked_fixture(law, NULL, teardown);
	tcase_set_timeout(law, runner_count(60, 600));
	tcase_add_test(law, of_many_sides_the_first_are_named_and_the_other_pieces_counted);
	tcase_add_test(law, all_that_is_told_of_a_size_adds_up_to_its_pieces);
	return suite;
}
