/* Reports are printed row by row: neither they nor their tables are held. */
#include "report/json/json.h"
#include "report/text/print.h"
#include "support/garden.h"
#include "support/measure.h"
#include "support/runner.h"

enum { SIZE = 256, KB = 1000, ROW = 400 * KB };

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static void given(int shape)
{
	garden = (struct garden){ .arena = ARENA_EMPTY };
	shapes[shape].draw(&garden.plot, SIZE);
	garden_count(&garden);
}

/* Looks at the heap whenever something is printed. */
struct watching_sink {
	struct sink sink; /* first */
	size_t printed, most;
};

static void watch(struct sink *sink, const char *bytes, size_t length)
{
	struct watching_sink *watching = (struct watching_sink *)sink;
	size_t in_use = heap_in_use();

	(void)bytes;
	watching->printed += length;
	watching->most = in_use > watching->most ? in_use : watching->most;
}

static void is_held_at_most(const struct watching_sink *watched, size_t before, size_t most)
{
	ck_assert_msg(watched->most <= before + most, "%zu bytes held for %zu printed",
		watched->most - before, watched->printed);
}

START_TEST(json_holds_no_more_than_a_row)
{
	struct watching_sink sink = { .sink = { watch } };
	size_t before;

	given(_i);
	before = heap_in_use();
	report_json(&sink.sink, &garden.plot, &garden.takeoff);
	ck_assert_uint_gt(sink.printed, KB);
	is_held_at_most(&sink, before, ROW);
}
END_TEST

START_TEST(text_holds_no_more_than_a_row_and_which_regions_are_alike)
{
	struct watching_sink sink = { .sink = { watch } };
	size_t before;

	given(_i);
	before = heap_in_use();
	report_text(&sink.sink, &garden.plot, &garden.takeoff, "large.plot", PARTS_ALL);
	report_text(&sink.sink, &garden.plot, &garden.takeoff, "large.plot",
		PARTS_ALL & ~(1u << PART_FRONT)); /* with what explains them */
	ck_assert_uint_gt(sink.printed, 5 * KB);
	is_held_at_most(&sink, before, ROW +
		40 * (size_t)garden.takeoff.survey.region_count);
}
END_TEST

/* Megabytes at 2048 x 2048 cells. Of a plan of 256 x 256 it is a 64th, and a few for what is there
 * without any cell. */
enum { WITHOUT_CELLS = 6, FULL_SIZE = 2048 };
static const struct {
	const char *shape;
	int most;
} peaks[] = {
	{ "formal", 200 }, { "long beds", 200 }, { "small beds", 200 }, { "snags", 200 },
	{ "noise", 1000 }, { "checkerboard", 1000 }, { "beds and paths", 1000 },
	{ "spiral", 200 }, { "comb", 200 }, { "sieve", 400 }, { "fences", 400 },
};
enum { PEAKS = sizeof peaks / sizeof *peaks };

START_TEST(a_takeoff_stays_within_its_memory)
{
	int size = memory_is_its_own() ? runner_count(256, FULL_SIZE) : 512;
	int part = FULL_SIZE / size;
	int most = peaks[_i].most / (part * part) + (part > 1 ? WITHOUT_CELLS : 0);

	for (int is_json = 0; is_json < 2; is_json++) {
		struct measured measured =
			measure_takeoff(shape_named(peaks[_i].shape), size, is_json);

		ck_assert_int_eq(measured.status, 0);
		ck_assert_uint_gt(measured.printed, KB);
		ck_assert_msg(!memory_is_its_own() || measured.peak <= (size_t)most * KB * KB,
			"%s: %zu kB of %d MB", peaks[_i].shape, measured.peak / KB, most);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("streamed");
	TCase *held = suite_case(suite, "held"), *peak = suite_case(suite, "peak");

	tcase_add_checked_fixture(held, NULL, teardown);
	tcase_add_loop_test(held, json_holds_no_more_than_a_row, 0, shape_count);
	tcase_add_loop_test(held, text_holds_no_more_than_a_row_and_which_regions_are_alike, 0,
		shape_count);
	tcase_set_timeout(peak, runner_count(60, 600));
	tcase_add_loop_test(peak, a_takeoff_stays_within_its_memory, 0, PEAKS);
	return suite;
}
