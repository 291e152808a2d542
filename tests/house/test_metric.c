/* A metric plot speaks of metres, litres and kilograms alone: in its takeoff, on the pages of the
 * panel, in its cards, in messages and in what the editor asks. Read here are all samples and a
 * garden with something of everything, every message about a value, and long sessions at random. */
#include "base/memory.h"
#include "editor/acts/acts.h"
#include "plot/format/format.h"
#include "report/json/json.h"
#include "report/compare/comparison.h"
#include "report/panel/pages.h"
#include "report/text/print.h"
#include "report/words/snag_words.h"
#include "support/garden.h"
#include "support/random.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <ctype.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#define COUNT(table) ((int)(sizeof (table) / sizeof *(table)))

/* ---- Words that are none of a metric text ---------------------------------------------------- */

static const char *const units[] = { "in", "ft", "lb", "yd", "oz", "cu", "sq", "gal" };
static const char *const words[] = { "foot", "inch", "inches", "pound", "pounds",
	"gallon", "gallons", "cu ft", "sq ft", "cu yd", "lb/cu", "imperial pint" };

static bool is_word_at(const char *at, const char *text, const char *word)
{
	size_t length = strlen(word);

	return strncmp(at, word, length) == 0 && !isalpha((unsigned char)at[length]) &&
		(at == text || !isalpha((unsigned char)at[-1]));
}

/* "2 in all", "3 in the ground": behind a count and a preposition. */
static bool is_counted(const char *at)
{
	static const char *const nouns[] = { " all", " the ", " a ", " each ", " it", " line" };

	for (int i = 0; i < COUNT(nouns); i++)
		if (strncmp(at, nouns[i], strlen(nouns[i])) == 0)
			return true;
	return false;
}

/* "12 in", "4ft", "1/2 in": a unit behind a number, on the same line or the next. */
static bool is_measure_at(const char *at)
{
	while (*at == ' ' || *at == '\n')
		at++;
	for (int i = 0; i < COUNT(units); i++)
		if (strncmp(at, units[i], strlen(units[i])) == 0 &&
			!isalpha((unsigned char)at[strlen(units[i])]))
			return i > 0 || !is_counted(at + 2);
	return false;
}

/* The last digit of a number, not of "m3". */
static bool ends_number(const char *at, const char *text)
{
	const char *first = at;

	if (!isdigit((unsigned char)*at) || isdigit((unsigned char)at[1]))
		return false;
	while (first > text && (isdigit((unsigned char)first[-1]) || first[-1] == '.'))
		first--;
	return first == text || !isalpha((unsigned char)first[-1]);
}

static const char *imperial_in(const char *text)
{
	for (const char *at = text; *at; at++) {
		for (int i = 0; i < COUNT(words); i++)
			if (is_word_at(at, text, words[i]))
				return at;
		if (ends_number(at, text) && is_measure_at(at + 1))
			return at;
	}
	return NULL;
}

static void check_metric(const char *text, const char *where)
{
	const char *at = text ? imperial_in(text) : NULL;
	int before = at && at - text > 60 ? 60 : at ? (int)(at - text) : 0;

	ck_assert_msg(!at, "%s: ...%.100s", where, at ? at - before : "");
}

START_TEST(the_search_finds_what_it_is_for)
{
	static const char *const bad[] = { "a block of 8 in.", "1/2 in", "4ft", "6 lb", "2 cu yd",
		"a foot back", "over 50 pounds", "30.6\n  ft", "0.6 cu ft", "12 in x 3 in",
		"4 in, 2 in with a tamper",
		"layers of 4 in at most" };
	static const char *const good[] = { "150 mm", "2 in all", "30 in the ground",
		"one-way fit", "Weavers' Yard", "mind feet and hearing", "0.5 m3", "inset 3",
		"12 insects", "5 %", "0.3 m3 in place", "1 in line", "your yard" };

	for (int i = 0; i < COUNT(bad); i++)
		ck_assert_msg(imperial_in(bad[i]) != NULL, "%s", bad[i]);
	for (int i = 0; i < COUNT(good); i++)
		ck_assert_msg(imperial_in(good[i]) == NULL, "%s", good[i]);
}
END_TEST

/* ---- Takeoffs and pages ---------------------------------------------------------------------- */

static struct garden garden;

/* Each page, that of what has changed beside the same plan without its first row. */
static void check_pages(void)
{
	struct pages pages = { 0 };
	struct garden before = { .plot = { details_copy(&garden.plot.details),
		ground_copy(&garden.plot.ground) } };
	const struct compared compared = { &before.plot, &before.takeoff, NULL };
	const struct saved saved = { .counted = &compared };

	memset(before.plot.ground.cells, OPEN_GROUND, (size_t)before.plot.ground.columns);
	garden_count(&before);
	for (int i = 0; i < pages_count(); i++) {
		ck_assert(pages_make(&pages, i, &garden.takeoff, &garden.plot, &saved));
		for (size_t j = 0; j < pages.pages[i].count; j++) {
			check_metric(pages.pages[i].lines[j].label, page_name(i));
			check_metric(pages.pages[i].lines[j].value, page_name(i));
		}
	}
	pages_fini(&pages);
	garden_fini(&before);
}

static void check_takeoff(const char *where)
{
	struct text text = TEXT_EMPTY;
	struct text_sink sink = text_sink(&text);

	garden_count(&garden);
	report_text(&sink.sink, &garden.plot, &garden.takeoff, "garden.plot", PARTS_ALL);
	check_metric(text.bytes, where);
	text_clear(&text);
	report_json(&sink.sink, &garden.plot, &garden.takeoff);
	check_metric(text.bytes, where);
	text_fini(&text);
	check_pages();
}

/* Other figures than those in the plots' own notes and inches. */
static void make_metric(const char *cell)
{
	struct details *details = &garden.plot.details;
	struct block *blocks[64] = { &details->allow };
	int count = 1;

	for (size_t i = 0; i < details->legend_count; i++)
		blocks[count++] = &details->legend[i].block;
	for (size_t i = 0; i < details->fence_count; i++)
		blocks[count++] = &details->fences[i].block;
	for (int i = 0; i < count; i++) {
		block_fini(blocks[i]);
		for (enum attribute a = block_first(blocks[i]->kind);
			a <= block_last(blocks[i]->kind); a++)
			ck_assert(!block_value(blocks[i], a)->set);
	}
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	plot_set(&garden.plot, 0, HEAD_CELL, cell);
	if (garden.has_book) /* its own words may be in any units */
		book_fini(&garden.book);
	garden.has_book = false;
}

START_TEST(no_takeoff_of_a_sample_in_metres_says_inches)
{
	static const char *const files[] = { "plots/court.plot", "plots/elbow.plot",
		"plots/great-court.plot", "plots/growing-court.plot", "plots/ring.plot",
		"plots/rope-walk.plot",
		"plots/snags.plot", "plots/well-yard.plot" };
	static const char *const cells[] = { "300 mm", "0.4 m", "150 mm" };

	for (int i = 0; i < COUNT(cells); i++) {
		garden_file(&garden, files[_i]);
		make_metric(cells[i]);
		check_takeoff(files[_i]);
		garden_fini(&garden);
	}
}
END_TEST

/* The choices that a bed, a path, a lawn can have, one garden each. */
START_TEST(no_takeoff_of_anything_in_metres_says_inches)
{
	static const struct {
		char letter;
		enum attribute attribute;
		const char *value;
	} rows[] = {
		{ 'b', BED_INSIDE, "filled" }, { 'b', BED_INSIDE, "base" },
		{ 'b', BED_BUILD, "level" }, { 'b', BED_REPLACE, "yes" },
		{ 'b', BED_CAP, "400 mm x 200 mm x 50 mm" }, { 'b', BED_COURSES, "12" },
		{ 'b', BED_COURSES, "1" }, { 'b', BED_BLOCK, "450 mm x 215 mm x 110 mm" },
		{ 'b', BED_MIX, "topsoil 1" }, { 'b', BED_JOINT, "10 mm" },
		{ 'b', BED_EMBED, "0 mm" }, { 'b', BED_FREEBOARD, "1 m" },
		{ 'p', PATH_STONE, "clean" }, { 'p', PATH_FABRIC, "no" },
		{ 'l', LAWN_COVER, "seed" }, { 'l', LAWN_COVER, "none" },
		{ 'S', FIXTURE_HEIGHT, "3 m" }, { 0, ALLOW_TAMPER, "hand" },
		{ 0, ALLOW_SUBSOIL, "clay" }, { 0, ALLOW_FROST, "800 mm" },
		{ 0, ALLOW_TOPSOIL, "100 mm" }, { 0, ALLOW_HELD, "left" },
		{ 0, ALLOW_SOD, "0 mm" },
	};
	static const char *const ground[] = { "..........pp....", ".bbbbbbbb.pplll.",
		".bbbbbbbb.pplll.", ".bbbbbbbb.pplll.", ".bbbbbbbbppppppp", "....SSppppppppll",
		"bbb.SS.........l", "bbb............l", NULL };

	garden_rows(&garden, ground);
	make_metric("300 mm");
	plot_set(&garden.plot, rows[_i].letter, rows[_i].attribute, rows[_i].value);
	for (int high = 0; high < 2; high++) {
		struct fence *fence = details_add_fence(&garden.plot.details,
			memory_string("Pickets"));
		struct route *run = fence_add_run(fence);

		route_add(run, (struct place){ 0, high ? 8 : 0 });
		route_add(run, (struct place){ 16, high ? 8 : 0 });
		if (high)
			block_set(&fence->block, FENCE_HEIGHT,
				(struct value){ .set = true, .as.length = 2 * NM_PER_M });
		legs_add(&fence->gates,
			(struct leg){ { 10, high ? 8 : 0 }, { 12, high ? 8 : 0 } });
	}
	check_takeoff(attribute_row(rows[_i].attribute)->keyword);
	garden_fini(&garden);
}
END_TEST

/* Of all rules, for no garden breaks all. */
START_TEST(no_source_of_a_rule_says_inches)
{
	check_metric(snag_source((enum snag_code)_i), snag_word((enum snag_code)_i));
}
END_TEST

/* ---- Cards and messages --------------------------------------------------------------------- */

START_TEST(no_field_and_no_message_about_one_says_inches)
{
	static const char *const typed[] = { "", "x", "12", "1.5.5", "99999 m", "1 m 1 m", "3 kg",
		"-1", "400 mm x", "400 mm x 500 mm x 1 mm", "topsoil", "0 L", "999999999 kg",
		"999999999 kg/m3", "999999999 g/m2", "999999999 m3", "0.0000001" };
	enum attribute a = (enum attribute)_i;
	const struct attribute_row *row = attribute_row(a);
	const struct value *preset = attribute_preset(a, UNITS_METRIC);
	struct text text = TEXT_EMPTY;

	if (preset->set)
		value_write(&text, &row->rule, preset, UNITS_METRIC);
	check_metric(text.bytes, row->keyword);
	text_fini(&text);
	check_metric(row->label, row->keyword);
	check_metric(row->meaning, row->keyword);
	check_metric(attribute_derived(a, UNITS_METRIC), row->keyword);
	check_metric(attribute_source(a, UNITS_METRIC), row->keyword);
	for (int i = 0; i < COUNT(typed); i++) {
		struct scan s = scan_start(typed[i], strlen(typed[i]), 1);
		struct value value = { .set = false };
		struct diag d = { .line = 0 };

		if (value_scan(&s, &row->rule, UNITS_METRIC, &value, &d))
			value_fini(row->rule.kind, &value);
		else
			check_metric(d.expected, row->keyword);
	}
}
END_TEST

/* Somebody who presses any key, answers anything, and reads all that is said. */
struct reader {
	struct asker asker; /* first */
	struct random random;
	struct editor editor;
};

static int choose(struct asker *asker, const struct question *question)
{
	struct reader *reader = (struct reader *)asker;

	check_metric(question->text, "a question");
	for (int i = 0; i < question->count; i++) {
		check_metric(question->answers[i], question->text);
		check_metric(question->notes ? question->notes[i] : NULL, question->text);
	}
	return random_below(&reader->random, question->count + 1) - 1;
}

/* What is typed is metric, or nothing that could be measured. */
static bool fill(struct asker *asker, struct card *card)
{
	static const char *const typed[] = { "", "300 mm", "2 m", "7", "x", "5 %", "400 mm", "1" };
	struct reader *reader = (struct reader *)asker;
	struct fault fault = { .field = 0 };
	bool is_taken;

	check_metric(card->title, "a card");
	for (int i = 0; i < card->count; i++) {
		check_metric(card->fields[i].label, card->title);
		check_metric(card->fields[i].meaning, card->title);
		check_metric(card->fields[i].typed, card->title);
		check_metric(card->fields[i].unset, card->title);
		if (random_below(&reader->random, 6) == 0 && strcmp(card->title,
			"The plot itself") != 0)
			card_type(card, i, typed[random_below(&reader->random, COUNT(typed))]);
	}
	is_taken = card->accept(card, &fault);
	check_metric(fault.words.bytes, card->title);
	fault_clear(&fault);
	text_fini(&fault.words);
	return is_taken;
}

static bool await(struct asker *asker, struct task *task)
{
	(void)asker;
	return task->run(task);
}

static void nothing(struct asker *asker)
{
	(void)asker;
}

static bool leaves(enum act_id act)
{
	return act == ACT_LEAVE || act == ACT_PAUSE || act == ACT_TAKEOFF || act == ACT_DRAWING ||
		act == ACT_SAVE ||
		act == ACT_SAVE_AS || act == ACT_COPY || act == ACT_FILES;
}

START_TEST(nothing_that_the_editor_says_of_a_metric_plot_is_in_inches)
{
	static const char *const ground[] = { "bbppl..p", "b.p.lSSp", "bbppl..p", "......lb",
		NULL };
	struct reader reader = { .asker = { choose, fill, await, nothing, nothing },
		.random = { (uint64_t)_i } };
	char *folder = scratch_new(), *home = getcwd(NULL, 0);
	struct text path = TEXT_EMPTY;
	struct plot plot;

	ck_assert_int_eq(chdir(folder), 0); /* files of any name are written */
	text_print(&path, "%s/metric.plot", folder);
	plot_from_rows(&plot, ground);
	plot_set(&plot, 0, HEAD_UNITS, "metric");
	plot_set(&plot, 0, HEAD_CELL, "300 mm");
	editor_init(&reader.editor, &reader.asker, path.bytes);
	editor_take(&reader.editor, &plot, true);
	for (int i = 0; i < 400; i++) {
		enum act_id act = (enum act_id)random_between(&reader.random, ACT_FIRST, ACTS - 1);

		if (leaves(act))
			continue;
		editor_refresh(&reader.editor);
		acts_do(&reader.editor, act);
		check_metric(reader.editor.message.bytes, acts_get(act)->name);
		check_metric(acts_get(act)->wish, acts_get(act)->name);
	}
	editor_fini(&reader.editor);
	text_fini(&path);
	ck_assert_int_eq(chdir(home), 0);
	free(home);
	scratch_remove(folder);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("metric");
	TCase *takeoffs = suite_case(suite, "takeoffs"), *editor = suite_case(suite, "editor");

	tcase_add_test(takeoffs, the_search_finds_what_it_is_for);
	tcase_add_loop_test(takeoffs, no_takeoff_of_a_sample_in_metres_says_inches, 0, 6);
	tcase_add_loop_test(takeoffs, no_takeoff_of_anything_in_metres_says_inches, 0, 23);
	tcase_add_loop_test(takeoffs, no_source_of_a_rule_says_inches, SNAG_WALL_JOG, SNAG_CODES);
	tcase_add_loop_test(editor, no_field_and_no_message_about_one_says_inches, 0, ATTRIBUTES);
	tcase_add_loop_test(editor, nothing_that_the_editor_says_of_a_metric_plot_is_in_inches, 0,
		runner_count(20, 200));
	return suite;
}
