/* The page of the sun, and what is said of the cell under the cursor. */
#include "editor/here.h"
#include "report/words/sun_words.h"
#include "support/desk.h"
#include "support/plots.h"
#include "support/runner.h"
#include "support/stopper.h"
#include "takeoff/sun/sun_hours.h"

#include <stdlib.h>
#include <string.h>

static struct text here(struct desk *b, int x, int y)
{
	struct text words = TEXT_EMPTY;

	b->editor.cursor = (struct place){ x, y };
	editor_draw(&b->editor);
	here_words(&b->editor, &words);
	return words;
}

static void check_here(struct desk *b, int x, int y, const char *part, bool is_there)
{
	struct text words = here(b, x, y);

	ck_assert_msg((strstr(words.bytes, part) != NULL) == is_there, "%s in %s", part,
		words.bytes);
	text_fini(&words);
}

/* The hours as takeoff/sun/ has them. */
START_TEST(beds_and_lawns_have_their_hours_and_classes)
{
	struct desk *b = desk_in_sun("45");
	struct date days[SUN_USUAL_DAYS];
	struct arena arena = ARENA_EMPTY;
	struct sun_hours sun;

	sun_usual_days(45, days);
	sun_begin(&sun, &arena, &b->editor.takeoff, days, SUN_USUAL_DAYS);
	while (sun.counted < SUN_USUAL_DAYS)
		ck_assert(sun_count(&sun));
	ck_assert(sun_finish(&sun));
	ck_assert_str_eq(desk_line(b, "Sun", "L1 l l", "Class")->value, "full sun");
	ck_assert_str_eq(desk_line(b, "Sun", "B1 b b", "Class")->value,
		sun_class_words[sun.regions[1].class].label);
	ck_assert_double_eq_tol(strtod(desk_line(b, "Sun", "B1 b b", "Hours a day")->value, NULL),
		sun.regions[1].mean, 0.0051);
	ck_assert_double_lt(sun.regions[1].mean, sun.regions[0].mean);
	desk_line(b, "Sun", "Ground, and from how many h", "Full sun, 6");
	desk_line(b, "Sun", "Ground, and from how many h", "Shade, 0");
	arena_clear(&arena);
	desk_free(b);
}
END_TEST

START_TEST(without_a_latitude_it_says_where_that_goes)
{
	struct desk *b = desk_in_sun(NULL);

	ck_assert_uint_eq(desk_page(b, "Sun")->count, 1);
	ck_assert_ptr_nonnull(strstr(desk_page(b, "Sun")->lines[0].label, "No latitude"));
	check_here(b, 0, 0, "of sun a day", false);
	desk_free(b);
}
END_TEST

START_TEST(the_season_is_that_of_the_south_there)
{
	struct desk *b = desk_in_sun("-34");

	desk_line(b, "Sun", "",
		"In the mean of a day, 21 September to 21 March, under a clear sky.");
	desk_free(b);
}
END_TEST

/* Not on fixtures, nor while the page is not there or does not hold. */
START_TEST(here_has_the_hours_of_the_cell)
{
	struct desk *b = desk_in_sun("45");

	desk_page(b, "Sun");
	check_here(b, 0, 0, "h of sun a day: full sun\n", true);
	check_here(b, 0, 6, "of sun a day", false);
	*ground_at(&editor_edit(&b->editor)->ground, 4, 1) = 'l';
	editor_stroke(&b->editor);
	check_here(b, 0, 0, "of sun a day", false);
	desk_refresh(b);
	desk_page(b, "Sun");
	check_here(b, 0, 0, "h of sun a day: full sun\n", true);
	desk_free(b);
}
END_TEST

START_TEST(a_page_that_is_stopped_is_not_there)
{
	struct desk *b = desk_in_sun("45");
	struct pages pages = { .pages[0].is_made = false };
	struct stopper stopper;
	int page = 0;
	int64_t asks;

	while (strcmp(page_name(page), "Sun") != 0)
		page++;
	stopper_begin(&stopper, 0);
	ck_assert(pages_make(&pages, page, &b->editor.takeoff, b->editor.plot, NULL));
	ck_assert_ptr_nonnull(pages_sun(&pages));
	asks = stopper.asks;
	for (int64_t at = 1; at <= asks; at += 1 + asks / 40) {
		pages_fini(&pages);
		stopper_begin(&stopper, at);
		ck_assert(!pages_make(&pages, page, &b->editor.takeoff, b->editor.plot, NULL));
		ck_assert_ptr_null(pages_sun(&pages));
		stopper_end();
	}
	pages_fini(&pages);
	desk_free(b);
}
END_TEST

/* Counting asks at each thing that casts shade under each place of the sun, some thousand times. */
START_TEST(hours_that_a_plant_needs_are_counted_once)
{
	struct desk *b = desk_in_sun("45");
	struct stopper stopper;

	plot_add_lines(editor_edit(&b->editor), "plant z \"Rose\"\n  sun full\n  at 4,3\n");
	editor_stroke(&b->editor);
	stopper_begin(&stopper, 0);
	ck_assert(editor_refresh(&b->editor));
	ck_assert_int_gt(stopper.asks, 1000);
	stopper_begin(&stopper, 0);
	b->editor.layer = LAYER_SUN;
	ck_assert(editor_refresh_light(&b->editor));
	ck_assert_int_lt(stopper.asks, 100);
	stopper_end();
	ck_assert(editor_has_light(&b->editor));
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("page of the sun");
	TCase *page = suite_case(suite, "page");

	tcase_add_test(page, beds_and_lawns_have_their_hours_and_classes);
	tcase_add_test(page, without_a_latitude_it_says_where_that_goes);
	tcase_add_test(page, the_season_is_that_of_the_south_there);
	tcase_add_test(page, here_has_the_hours_of_the_cell);
	tcase_add_test(page, a_page_that_is_stopped_is_not_there);
	tcase_add_test(page, hours_that_a_plant_needs_are_counted_once);
	return suite;
}
