/* Zones: which beds and lines run at once. */
#include "takeoff/watering/water_zones.h"
#include "support/random.h"
#include "support/runner.h"

enum { BEDS = 12, LINES = 9, RANDOM_LISTS = 300 };

static struct arena arena;
static struct drip drips[BEDS];
static struct drip_line lines[BEDS][LINES];
static struct zone_load loads[BEDS];
static struct zone_list zones;

static void setup(void)
{
	arena = ARENA_EMPTY;
}

static void teardown(void)
{
	arena_clear(&arena);
}

/* A bed with lines of so many emitters; 0 ends them. */
static void bed(int index, const int *emitters)
{
	drips[index] = (struct drip){ .lines = lines[index] };
	for (int i = 0; i < LINES && emitters[i] > 0; i++) {
		lines[index][i].emitters = emitters[i];
		drips[index].emitters += emitters[i];
		drips[index].count++;
	}
	loads[index] = (struct zone_load){ index, &drips[index] };
}

#define BED(index, ...) bed((index), (const int[LINES]){ __VA_ARGS__ })

START_TEST(beds_share_a_zone_while_the_supply_lasts)
{
	BED(0, 10, 10);
	BED(1, 20);
	BED(2, 20, 20);
	BED(3, 10);
	water_zones_make(&zones, &arena, loads, 4, 50);
	ck_assert_int_eq(zones.count, 2);
	ck_assert_int_eq(zones.list[0].bed_count, 2);
	ck_assert_int_eq(zones.list[0].emitters, 40);
	ck_assert_int_eq(zones.list[1].bed_count, 2);
	ck_assert_int_eq(zones.list[1].emitters, 50);
	ck_assert(!zones.list[1].beds[0].is_part);
}
END_TEST

START_TEST(a_bed_that_takes_more_alone_is_split_between_its_lines)
{
	BED(0, 10);
	BED(1, 20, 20, 20);
	BED(2, 30);
	water_zones_make(&zones, &arena, loads, 3, 50);
	ck_assert_int_eq(zones.count, 3);
	ck_assert_int_eq(zones.list[0].emitters, 10);
	ck_assert_int_eq(zones.list[1].emitters, 40);
	ck_assert_int_eq(zones.list[1].beds[0].lines, 2);
	ck_assert(zones.list[1].beds[0].is_part);
	/* its last line has room for the next bed */
	ck_assert_int_eq(zones.list[2].emitters, 50);
	ck_assert_int_eq(zones.list[2].beds[0].first, 2);
	ck_assert_int_eq(zones.list[2].beds[1].region, 2);
}
END_TEST

START_TEST(a_line_that_takes_more_alone_has_a_zone_of_its_own)
{
	BED(0, 60);
	BED(1, 60, 10, 60);
	BED(2, 5);
	water_zones_make(&zones, &arena, loads, 3, 50);
	ck_assert_int_eq(zones.count, 5);
	ck_assert_int_eq(zones.list[0].emitters, 60);
	ck_assert_int_eq(zones.list[2].emitters, 10);
	ck_assert_int_eq(zones.list[4].emitters, 5);
}
END_TEST

/* Every line is in one zone, in order; none takes more than it may but one of a single line. */
START_TEST(zones_have_every_line_once_and_no_more_than_they_may)
{
	struct random random = { (uint64_t)_i };
	int64_t most = random_between(&random, 10, 80);
	int at = 0, line = 0;

	for (int i = 0; i < BEDS; i++) {
		int emitters[LINES] = { 0 };

		for (int j = random_between(&random, 1, LINES) - 1; j >= 0; j--)
			emitters[j] = random_between(&random, 1, 30);
		bed(i, emitters);
	}
	water_zones_make(&zones, &arena, loads, BEDS, most);
	for (int i = 0; i < zones.count; i++) {
		const struct water_zone *zone = &zones.list[i];
		int64_t emitters = 0, of_beds = 0;
		int count = 0;

		ck_assert_int_eq(zone->number, i + 1);
		for (int j = 0; j < zone->bed_count; j++) {
			const struct zone_bed *of = &zone->beds[j];

			ck_assert_int_eq(of->bed, at);
			ck_assert_int_eq(of->first, line);
			ck_assert_int_eq(of->is_part, drips[at].emitters > most &&
				drips[at].count > 1);
			for (int k = 0; k < of->lines; k++)
				emitters += lines[at][line++].emitters;
			count += of->lines;
			of_beds += of->emitters;
			ck_assert_int_eq(of_beds, emitters);
			if (line == drips[at].count) {
				at++;
				line = 0;
			}
		}
		ck_assert_int_eq(zone->emitters, emitters);
		ck_assert(emitters <= most || count == 1);
	}
	ck_assert_int_eq(at, BEDS);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("water zones");
	TCase *cases = suite_case(suite, "cases");

	tcase_add_checked_fixture(cases, setup, teardown);
	tcase_add_test(cases, beds_share_a_zone_while_the_supply_lasts);
	tcase_add_test(cases, a_bed_that_takes_more_alone_is_split_between_its_lines);
	tcase_add_test(cases, a_line_that_takes_more_alone_has_a_zone_of_its_own);
	tcase_add_loop_test(cases, zones_have_every_line_once_and_no_more_than_they_may, 0,
		RANDOM_LISTS);
	return suite;
}
