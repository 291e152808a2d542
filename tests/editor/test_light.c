/* The sun over the plan, without a terminal: hours as the page, the printed map, JSON and the snag
 * of a plant have them, and the shadows of moments, stepped through a day. */
#include "editor/light.h"
#include "report/json/json_sun.h"
#include "report/text/print_sun.h"
#include "report/words/sun_words.h"
#include "support/desk.h"
#include "support/json.h"
#include "support/plots.h"
#include "support/runner.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define ROWS (const char *[])

enum { COLUMNS = 8, DOWN = 7 };

/* The rows of the printed map, one after the other. */
static void map_of(const struct desk *b, char map[DOWN * COLUMNS])
{
	struct date days[SUN_USUAL_DAYS];
	struct text page = TEXT_EMPTY;
	struct text_sink out = text_sink(&page);
	const char *at;

	sun_usual_days(sun_latitude(&b->editor.takeoff), days);
	report_sun(&out.sink, b->editor.plot, &b->editor.takeoff, "garden.plot", days,
		SUN_USUAL_DAYS);
	at = strstr(page.bytes, "0'-");
	ck_assert_ptr_nonnull(at);
	for (int y = 0; y < DOWN; y++) {
		at = strchr(at, '\n') + 1;
		memcpy(map + (size_t)y * COLUMNS, at - 1 - COLUMNS, COLUMNS);
	}
	text_fini(&page);
}

static void check_map(struct desk *b)
{
	const struct light light = light_of(&b->editor);
	char map[DOWN * COLUMNS];

	map_of(b, map);
	ck_assert(light_is_there(&light));
	for (int y = 0; y < DOWN; y++)
		for (int x = 0; x < COLUMNS; x++) {
			struct place cell = { x, y };
			char sign = light_has_cell(&light, cell) ? light_sign(&light, cell) : '#';

			ck_assert_int_eq(sign, map[y * COLUMNS + x]);
		}
}

START_TEST(the_layer_has_the_hours_of_the_printed_map)
{
	struct desk *b = desk_in_sun("45");

	desk_do(b, ACT_SHOW_SUN);
	desk_says_whole(b, "The mean of days from 21 March to 21 September.");
	check_map(b);
	desk_do(b, ACT_SHOW_SUN);
	desk_says_whole(b, "The plan shows no hours of sun now.");
	ck_assert(!light_of(&b->editor).is_asked);
	desk_free(b);
}
END_TEST

static cJSON *json_sun(const struct desk *b)
{
	struct date days[SUN_USUAL_DAYS];
	struct text page = TEXT_EMPTY;
	struct text_sink out = text_sink(&page);
	cJSON *sun;

	sun_usual_days(sun_latitude(&b->editor.takeoff), days);
	report_sun_json(&out.sink, b->editor.plot, &b->editor.takeoff, days, SUN_USUAL_DAYS);
	sun = cJSON_Parse(page.bytes);
	ck_assert_ptr_nonnull(sun);
	text_fini(&page);
	return sun;
}

/* Minutes of sun that the snag says the plant has, which needs more than there is. */
static int64_t snag_minutes(const struct desk *b)
{
	const struct snag_list *snags = &b->editor.takeoff.snags;

	for (size_t i = 0; i < snags->count; i++)
		if (snags->list[i].code == SNAG_PLANT_SUN)
			return snags->list[i].figures[1];
	ck_abort_msg("no snag of a plant");
	return 0;
}

/* Of a cell with a plant: snag, layer, page's steps, printed map and JSON. */
static void check_cell(struct desk *b, const cJSON *sun, int x, int y)
{
	const struct light light = light_of(&b->editor);
	double hours = cJSON_GetArrayItem(cJSON_GetArrayItem(json_get(sun, "mean_h"), y), x)
		->valuedouble;
	const char *class = cJSON_GetArrayItem(cJSON_GetArrayItem(json_get(sun, "class"), y), x)
		->valuestring;
	int steps = pages_sun(&b->editor.pages)[y * COLUMNS + x];
	char map[DOWN * COLUMNS];

	map_of(b, map);
	ck_assert_int_eq(snag_minutes(b), llround(60 * hours));
	ck_assert_double_eq_tol(sun_usual_mean(steps), hours, 1e-8);
	ck_assert_int_eq(light_sign(&light, (struct place){ x, y }), map[y * COLUMNS + x]);
	ck_assert_int_eq(map[y * COLUMNS + x], sun_sign(sun_usual_mean(steps)));
	ck_assert_str_eq(sun_class_words[light_class(&light, (struct place){ x, y })].key, class);
}

/* Of the raised bed: page and JSON. */
static void check_bed(struct desk *b, const cJSON *sun)
{
	const cJSON *bed = cJSON_GetArrayItem(json_get(sun, "regions"), 1);

	ck_assert_str_eq(json_get(bed, "region")->valuestring, "B1");
	ck_assert_double_eq_tol(strtod(desk_line(b, "Sun", "B1 b b", "Hours a day")->value, NULL),
		json_get(bed, "mean_h")->valuedouble, 0.0051);
}

/* A plant in the lawn, on open ground, in the bed and right behind the wall. */
START_TEST(snag_page_layer_map_and_json_have_the_same_hours)
{
	static const struct place at[] = { { 0, 0 }, { 4, 3 }, { 6, 5 }, { 1, 5 } };
	struct desk *b = desk_in_sun("45");
	char lines[80];
	cJSON *sun;

	plot_set(editor_edit(&b->editor), 0, ALLOW_SUN_FULL, "20");
	snprintf(lines, sizeof lines, "plant z \"Rose\"\n  sun full\n  at %d,%d\n", at[_i].x,
		at[_i].y);
	plot_add_lines(editor_edit(&b->editor), lines);
	editor_stroke(&b->editor);
	desk_do(b, ACT_SHOW_SUN);
	desk_refresh(b);
	sun = json_sun(b);
	check_cell(b, sun, at[_i].x, at[_i].y);
	check_bed(b, sun);
	cJSON_Delete(sun);
	desk_free(b);
}
END_TEST

/* Bounds that are no whole minutes, such as those of the mean of a cell itself. */
START_TEST(its_classes_are_those_of_the_page_at_any_bounds)
{
	struct desk *b = desk_in_sun("45");
	int64_t cells[SUN_CLASSES] = { 0 };
	const struct takeoff *takeoff = &b->editor.takeoff;
	struct date days[SUN_USUAL_DAYS];
	struct arena arena = ARENA_EMPTY;
	struct light light;
	struct sun_hours sun;

	plot_set(editor_edit(&b->editor), 0, ALLOW_SUN_FULL, "5.940476");
	plot_set(editor_edit(&b->editor), 0, ALLOW_SUN_PART, "5.738095");
	editor_stroke(&b->editor);
	desk_refresh(b);
	desk_do(b, ACT_SHOW_SUN);
	light = light_of(&b->editor);
	for (int i = 0; i < DOWN * COLUMNS; i++) {
		struct place cell = { i % COLUMNS, i / COLUMNS };

		if (light_has_cell(&light, cell))
			cells[light_class(&light, cell)]++;
	}
	sun_usual_days(45, days);
	sun_begin(&sun, &arena, takeoff, days, SUN_USUAL_DAYS);
	while (sun.counted < SUN_USUAL_DAYS)
		ck_assert(sun_count(&sun));
	ck_assert(sun_finish(&sun));
	for (int i = 0; i < SUN_CLASSES; i++)
		ck_assert_int_eq(cells[i], sun.class_cells[i]);
	arena_clear(&arena);
	desk_free(b);
}
END_TEST

START_TEST(it_is_not_there_after_a_stroke_until_it_is_counted_anew)
{
	struct desk *b = desk_in_sun("45");
	struct light light;

	desk_do(b, ACT_SHOW_SUN);
	b->editor.cursor = (struct place){ 2, 2 };
	acts_press(&b->editor, 'S');
	acts_press(&b->editor, ' ');
	ck_assert(light_of(&b->editor).is_asked);
	ck_assert(!editor_has_light(&b->editor));
	light = light_of(&b->editor);
	ck_assert(!light_is_there(&light) && !light_has_cell(&light, b->editor.cursor));
	ck_assert_str_eq(light_missing_words(&b->editor), "Hours of sun: counting ...");
	ck_assert(editor_refresh(&b->editor));
	ck_assert(!editor_has_light(&b->editor));
	ck_assert(editor_refresh_light(&b->editor));
	ck_assert(editor_has_light(&b->editor));
	check_map(b);
	desk_free(b);
}
END_TEST

/* Some pages take longer than all else. */
START_TEST(it_is_there_before_the_page_of_the_panel)
{
	struct desk *b = desk_in_sun("45");

	desk_do(b, ACT_SHOW_SUN);
	b->editor.cursor = (struct place){ 2, 2 };
	acts_press(&b->editor, 'S');
	acts_press(&b->editor, ' ');
	ck_assert(editor_refresh_light(&b->editor));
	ck_assert(editor_has_light(&b->editor));
	ck_assert(!editor_is_counted(&b->editor));
	check_map(b);
	desk_free(b);
}
END_TEST

START_TEST(without_a_latitude_it_says_what_is_missing)
{
	struct desk *b = desk_in_sun(NULL);
	struct light light;

	desk_do(b, ACT_SHOW_SUN);
	desk_says_whole(b, "No latitude is told. # has the card of the plot itself, with a field "
		"for it.");
	ck_assert_int_eq(b->editor.layer, LAYER_NONE);
	desk_do(b, ACT_SHADOWS);
	desk_says_whole(b, "No latitude is told. # has the card of the plot itself, with a field "
		"for it.");
	ck_assert_str_eq(b->asked, "");
	desk_free(b);
	b = desk_in_sun("45");
	desk_do(b, ACT_SHOW_SUN);
	desk_press(b, PRESS_BACKSPACE);
	desk_refresh(b);
	light = light_of(&b->editor);
	ck_assert(light.is_asked && !light_is_there(&light));
	ck_assert_str_eq(light_missing_words(&b->editor),
		"No latitude is told: # The plot itself has a field for it.");
	desk_free(b);
}
END_TEST

/* Limes south of the lawn, beyond the plan; added, made lower, and all of it taken back. */
START_TEST(it_follows_shade_that_is_added_changed_and_taken_back)
{
	struct desk *b = desk_in_sun("45");
	char before[DOWN * COLUMNS], after[DOWN * COLUMNS], lower[DOWN * COLUMNS];

	desk_do(b, ACT_SHOW_SUN);
	map_of(b, before);
	desk_answer(b, ROWS { "Name: Limes; Left edge, across: 0 ft; Top edge, down: 9 ft; "
		"Width: 3 ft; Depth: 2 ft; Height: 30 ft", "Limes", "Height: 12 ft", NULL });
	desk_do(b, ACT_SHADE);
	desk_says_whole(b, "Shade: Limes, 3 ft x 2 ft, below the plan; Backspace takes it back.");
	map_of(b, after);
	check_map(b);
	ck_assert_int_ne(memcmp(before, after, sizeof before), 0);
	desk_do(b, ACT_CARDS);
	desk_answered(b);
	map_of(b, lower);
	check_map(b);
	ck_assert_int_ne(memcmp(after, lower, sizeof after), 0);
	desk_press(b, PRESS_BACKSPACE);
	map_of(b, lower);
	ck_assert_int_eq(memcmp(after, lower, sizeof after), 0);
	desk_press(b, PRESS_BACKSPACE);
	map_of(b, after);
	check_map(b);
	ck_assert_int_eq(memcmp(before, after, sizeof before), 0);
	desk_free(b);
}
END_TEST

START_TEST(levels_and_sun_go_for_one_another)
{
	struct desk *b = desk_in_sun("45");

	desk_answer(b, ROWS { "How far apart: 7 ft", "", NULL });
	desk_do(b, ACT_SHOW_SUN);
	desk_do(b, ACT_LEVELS);
	desk_answered(b);
	ck_assert_int_eq(b->editor.layer, LAYER_LEVELS);
	desk_do(b, ACT_SHOW_SUN);
	ck_assert_int_eq(b->editor.layer, LAYER_SUN);
	desk_do(b, ACT_SHOW_LEVELS);
	ck_assert_int_eq(b->editor.layer, LAYER_LEVELS);
	desk_free(b);
}
END_TEST

/* ---- Moments --------------------------------------------------------------------------------- */

static const struct { const char *answer, *after; } walked[] = {
	{ "", "2026-06-21 9:00 solar: " },
	{ "15 min on", "2026-06-21 9:15 solar: " },
	{ "15 min back", "2026-06-21 8:45 solar: " },
	{ "1 h on", "2026-06-21 10:00 solar: " },
	{ "1 h back", "2026-06-21 8:00 solar: " },
};
enum { WALKED = sizeof walked / sizeof *walked };

/* What a moment says as the last question of it is asked. */
static char said[128];

static int choose_and_note(struct asker *asker, const struct question *question)
{
	struct desk *b = (struct desk *)asker;
	struct arena words = ARENA_EMPTY;
	struct report report = editor_report(&b->editor, &words);
	const char *answer = b->answers[0];

	ck_assert_ptr_nonnull(b->editor.moment);
	ck_assert_msg(answer != NULL, "no answer was written down for: %s", question->text);
	snprintf(said, sizeof said, "%s", light_moment_words(&report, b->editor.moment, false));
	arena_clear(&words);
	b->answers++;
	for (int i = 0; i < question->count; i++)
		if (strcmp(question->answers[i], answer) == 0)
			return i;
	ck_assert_str_eq(answer, "");
	return ANSWER_NONE;
}

static void walk(struct desk *b, const char *const *answers)
{
	b->asker.choose = choose_and_note;
	desk_answer(b, answers);
	desk_do(b, ACT_SHADOWS);
	ck_assert_ptr_null(b->editor.moment);
	desk_answered(b);
}

START_TEST(a_moment_is_stepped_by_quarters_and_hours_and_changes_nothing)
{
	struct desk *b = desk_in_sun("45");
	int64_t before = b->editor.position;
	bool steps = *walked[_i].answer;

	walk(b, ROWS { "Day: 2026-06-21", steps ? walked[_i].answer : "", steps ? "" : NULL,
		NULL });
	ck_assert_msg(strncmp(said, walked[_i].after, strlen(walked[_i].after)) == 0, "%s", said);
	ck_assert_int_eq(b->editor.position, before);
	desk_free(b);
}
END_TEST

/* By geometry the sun's hour angle at rise and set has the cosine -tan latitude x tan declination
 * (textbooks of astronomy, from memory): 90 degrees at an equinox, six hours from noon; at 45 north
 * with 23.44 south 64.3 degrees, so that it sets at 16:17. */
START_TEST(it_goes_no_further_than_the_sun_is_up)
{
	struct desk *b = desk_in_sun("45");

	walk(b, ROWS { "Day: 2026-03-20", "1 h back", "1 h back", "1 h back", "1 h back",
		"15 min back", "", NULL });
	ck_assert_msg(strncmp(said, "2026-03-20 6:", 13) == 0, "%s", said);
	walk(b, ROWS { "Day: 2026-03-20", "Another day", "Day: 2026-12-21", "1 h on", "1 h on",
		"1 h on", "1 h on", "1 h on", "1 h on", "1 h on", "1 h on", "", NULL });
	ck_assert_msg(strncmp(said, "2026-12-21 16:15 ", 17) == 0, "%s", said);
	desk_free(b);
}
END_TEST

START_TEST(a_day_is_typed_the_longest_is_offered_and_what_is_none_is_refused)
{
	struct desk *b = desk_in_sun("66");

	walk(b, ROWS { "Day: 2026-12-21", "1 h on", "1 h back", "", NULL });
	ck_assert_msg(strncmp(said, "2026-12-21 11:", 14) == 0, "%s", said);
	walk(b, ROWS { "Day: 2026-02-30", "", NULL });
	ck_assert_str_eq(b->fault, "Day: year, month and day, such as 2026-06-21");
	ck_assert_ptr_nonnull(strstr(b->offered, "2026-06-21"));
	desk_free(b);
	b = desk_in_sun("-34");
	walk(b, ROWS { "", NULL });
	ck_assert_ptr_nonnull(strstr(b->offered, "2026-12-21"));
	desk_free(b);
}
END_TEST

/* A question more would be one too many for the desk. */
START_TEST(the_first_day_or_another_that_is_left_ends_it)
{
	struct desk *b = desk_in_sun("45");

	walk(b, ROWS { "", NULL });
	ck_assert_str_eq(b->all_asked, "Shadows\n");
	walk(b, ROWS { "Day: 2026-06-21", "Another day", "", NULL });
	ck_assert_str_eq(b->all_asked, "Shadows\nShadows\n");
	desk_free(b);
}
END_TEST

static int awaited; /* how many tasks are done before one is given up */

static bool await_some(struct asker *asker, struct task *task)
{
	(void)asker;
	return --awaited >= 0 && task->run(task);
}

/* The counting is done; in the second round the first moment too. */
START_TEST(casting_that_is_given_up_ends_it_whichever_moment_it_is)
{
	struct desk *b = desk_in_sun("45");

	b->asker.await = await_some;
	awaited = 1 + _i;
	walk(b, ROWS { "Day: 2026-06-21", _i ? "1 h on" : NULL, NULL });
	desk_free(b);
}
END_TEST

START_TEST(casting_that_is_given_up_shows_nothing)
{
	struct desk *b = desk_in_sun("45");

	b->gives_up = true;
	desk_do(b, ACT_SHADOWS);
	desk_says_whole(b, "Given up: it is not counted yet.");
	ck_assert_ptr_null(b->editor.moment);
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("light");
	TCase *hours = suite_case(suite, "hours");
	TCase *moments = suite_case(suite, "moments");

	tcase_add_test(hours, the_layer_has_the_hours_of_the_printed_map);
	tcase_add_loop_test(hours, snag_page_layer_map_and_json_have_the_same_hours, 0, 4);
	tcase_add_test(hours, its_classes_are_those_of_the_page_at_any_bounds);
	tcase_add_test(hours, it_is_not_there_after_a_stroke_until_it_is_counted_anew);
	tcase_add_test(hours, it_is_there_before_the_page_of_the_panel);
	tcase_add_test(hours, without_a_latitude_it_says_what_is_missing);
	tcase_add_test(hours, it_follows_shade_that_is_added_changed_and_taken_back);
	tcase_add_test(hours, levels_and_sun_go_for_one_another);
	tcase_add_loop_test(moments,
		a_moment_is_stepped_by_quarters_and_hours_and_changes_nothing, 0, WALKED);
	tcase_add_test(moments, it_goes_no_further_than_the_sun_is_up);
	tcase_add_test(moments, a_day_is_typed_the_longest_is_offered_and_what_is_none_is_refused);
	tcase_add_test(moments, the_first_day_or_another_that_is_left_ends_it);
	tcase_add_loop_test(moments, casting_that_is_given_up_ends_it_whichever_moment_it_is, 0,
		2);
	tcase_add_test(moments, casting_that_is_given_up_shows_nothing);
	return suite;
}
