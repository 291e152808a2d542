/* Words of the order of work, its cautions and hours: they name what a plot has, and nothing
 * else. */
#include "base/memory.h"
#include "report/text/print.h"
#include "report/words/caution_words.h"
#include "report/words/work_words.h"
#include "support/details.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"

#include <ctype.h>
#include <stdio.h>
#include <string.h>

static struct garden garden;
static struct text text;

static void setup(void)
{
	text = TEXT_EMPTY;
}

static void teardown(void)
{
	garden_fini(&garden);
	text_fini(&text);
}

static struct report report_to(struct sink *out)
{
	return report_of(out, &garden.words, &garden.plot, &garden.takeoff, "");
}

/* All that is said of the work, on single lines of words. */
static void say_all(void)
{
	struct text printed = TEXT_EMPTY;
	struct text_sink out = text_sink(&printed);
	struct report report = report_to(&out.sink);

	garden_count(&garden);
	print_cautions(&report);
	print_programme(&report);
	text_add(&printed, uncounted_words(&report));
	text_clear(&text);
	for (const char *c = printed.bytes; *c; c++) {
		bool is_blank = isspace((unsigned char)*c);

		if (!is_blank || (text.length && text.bytes[text.length - 1] != ' '))
			text_add_bytes(&text, is_blank ? " " : c, 1);
	}
	text_fini(&printed);
}

static void says(const char *words)
{
	ck_assert_msg(strstr(text.bytes, words) != NULL, "\"%s\" is not said: %.3000s", words,
		text.bytes);
}

/* of: the plot, for the message. */
static void is_not_said(const char *of, const char *words)
{
	const char *found = strstr(text.bytes, words);

	ck_assert_msg(!found, "%s: \"%s\" is said: %.60s", of, words,
		found - text.bytes > 30 ? found - 30 : found);
}

static void says_not(const char *words)
{
	is_not_said("the plot", words);
}

/* ---- What a plot lacks ----------------------------------------------------------------------- */

/* Whose words these are: one of these must be there for them to be said. */
static const struct { uint64_t any; const char *words; } named[] = {
	{ FACT(WALLS), "wall" }, { FACT(WALLS), "Wall" }, { FACT(WALLS), "block" },
	{ FACT(ADHESIVE), "dhesive" }, { FACT(CUTS), "block saw" }, { FACT(CUTS), "awing" },
	{ FACT(CUTS), "lurry" }, { FACT(LINER), "filter" }, { FACT(LINER), "iner" },
	{ FACT(FABRIC) | FACT(LINER), "abric" }, { FACT(FABRIC), " pin" },
	{ FACT(EDGING), "dging" }, { FACT(EDGING), "spike" }, { FACT(PATHS), "path" },
	{ FACT(PATHS), "surface" }, { FACT(BASE), " base." }, { FACT(BASE), "ase stone" },
	{ FACT(BASE) | FACT(PATHS), "tone" }, { FACT(BASE) | FACT(PATHS), "compactor" },
	{ FACT(BASE) | FACT(PATHS), "plate" }, { FACT(PLATE), "compactor" },
	{ FACT(POSTS), " post" }, { FACT(POSTS), "Post" }, { FACT(POSTS), " fence" },
	{ FACT(POSTS), "Fence" },
	{ FACT(PANELS), "anel" }, { FACT(GATES), "gate" }, { FACT(GATES), "Gate" },
	{ FACT(CONCRETE), "oncrete" }, { FACT(GRAVEL), "ravel" }, { FACT(POSTS), "imber" },
	{ FACT(HOLES), "hole" }, { FACT(HOLES), "Hole" }, { FACT(HOLES), "uger" },
	{ FACT(FIXTURES), "ixture" }, { FACT(FIXTURES), "ipping:" },
	{ FACT(TURF), "turf" }, { FACT(TURF), "Turf" }, { FACT(SEED), "Seed" },
	{ FACT(SEED), "sow " }, { FACT(SEED), "Sow" },
	{ FACT(TURF) | FACT(SEED) | FACT(LAWN_SOIL), "lawn" }, { FACT(MULCH), "mulch" },
	{ FACT(MULCH), "Mulch" }, { FACT(BEDS), " bed" }, { FACT(BEDS), "plants" },
	{ FACT(SOD), " sod" }, { FACT(BACKFILL), "ackfill" }, { FACT(LOOSENED), "oosen" },
	{ FACT(DEEP), "trench" }, { FACT(SPOIL), "ayload" }, { FACT(EXTRAS), "as extra." },
	{ FACT(MIX), "Mix the" }, { FACT(CAPS) | FACT(POSTS), "caps" },
	{ FACT(TOPSOIL) | FACT(LAWN_SOIL) | FACT(RAISED) | FACT(REPLACED), "opsoil" },
	{ FACT(REUSED) | FACT(BACKFILL), "et aside" }, { FACT(CORE), "services" },
};
enum { NAMED = sizeof named / sizeof *named };

static void names_only_what_is_there(const char *what)
{
	for (int i = 0; i < NAMED; i++)
		if ((garden.takeoff.work.facts & named[i].any) == 0)
			is_not_said(what, named[i].words);
}

static const struct { char letter; enum attribute attribute; const char *value; } single[] = {
	{ 'p', PATH_STONE, "fines" }, { 'p', PATH_STONE, "clean" }, { 'p', PATH_FABRIC, "no" },
	{ 'p', PATH_EDGING, "no" }, { 'p', PATH_SURFACE, "0 in" }, { 'p', PATH_BASE, "0 in" },
	{ 'l', LAWN_COVER, "turf" }, { 'l', LAWN_COVER, "seed" }, { 'l', LAWN_COVER, "none" },
	{ 'l', LAWN_TOPSOIL, "0 in" }, { 'S', FIXTURE_HEIGHT, "3 ft" },
	{ 'S', FIXTURE_BASE, "0 in" },
	{ 'b', BED_BUILD, "raised" }, { 'b', BED_BUILD, "level" }, { 'b', BED_LINER, "no" },
	{ 'b', BED_MULCH, "0 in" }, { 'b', BED_MIX, "topsoil 1" }, { 'b', BED_COURSES, "1" },
	{ 'b', BED_CAP, "16 in x 8 in x 2 in" }, { 'b', BED_INSIDE, "base" },
	{ 'b', BED_BASE, "0 in" }, { 0, ALLOW_SOD, "0 in" }, { 0, ALLOW_TAMPER, "hand" },
	{ 0, ALLOW_TOPSOIL, "3 in" }, { 0, ALLOW_TOPSOIL, "2 m" },
};

START_TEST(a_plot_of_one_thing_names_no_other)
{
	static const char letters[] = "plSb";

	for (const char *letter = letters; *letter; letter++) {
		if (single[_i].letter && single[_i].letter != *letter)
			continue;
		garden_rectangle(&garden, *letter, 8, 4);
		plot_set(&garden.plot, single[_i].letter, single[_i].attribute, single[_i].value);
		say_all();
		names_only_what_is_there(letter);
		garden_fini(&garden);
	}
	garden = (struct garden){ .arena = ARENA_EMPTY };
}
END_TEST

START_TEST(a_fence_alone_names_nothing_else)
{
	fences_ground(&garden.plot, 30, 10);
	fences_run(&garden.plot, "2,5 22,5");
	say_all();
	names_only_what_is_there("a fence");
	says("Dig the post holes");
	fences_gate(&garden.plot, "10,5 14,5");
	fences_set(&garden.plot, FENCE_GRAVEL, "0 in");
	say_all();
	names_only_what_is_there("a fence with a gate");
	says("Hang panels and gates");
}
END_TEST

/* 0 ft, 1 in: a number before a unit of the other system. */
static const char *imperial_in(const char *words)
{
	static const char *const units[] = { "ft", "in", "lb", "oz", "yd", "sq ft", "cu ft",
		"cu yd", "sq-ft", "cu-ft", "foot", "feet", "inch", "inches", "pounds" };

	for (const char *c = words; *c; c++)
		for (size_t i = 0; isdigit((unsigned char)*c) && i < sizeof units / sizeof *units;
		     i++) {
			size_t length = strlen(units[i]);

			if (c[1] == ' ' && strncmp(c + 2, units[i], length) == 0 &&
				!isalnum((unsigned char)c[2 + length]))
				return c;
		}
	return NULL;
}

START_TEST(random_plots_name_only_what_they_have_in_their_own_units)
{
	int plots = runner_count(150, 1500);

	for (int seed = 0; seed < plots; seed++) {
		struct random random = { (uint64_t)seed };
		char what[32];

		plot_at_random(&garden.plot, &random, 16,
			seed % 4 == 0 ? "ab." : seed % 4 == 1 ? "pl." : seed % 4 == 2 ? "bS." :
			"abplS");
		if (seed % 2)
			plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
		if (seed % 4 == 0)
			plot_set(&garden.plot, 'a', BED_BUILD, "level");
		if (seed % 3 == 0)
			fences_at_random(&garden.plot, &random);
		if (seed % 5 == 0)
			details_add_extra(&garden.plot.details, memory_string("Paint"),
				(struct amount){ MILLION, AMOUNT_GOODS_KG });
		say_all();
		snprintf(what, sizeof what, "seed %d", seed);
		names_only_what_is_there(what);
		ck_assert_msg(seed % 2 == 0 || !imperial_in(text.bytes), "%s: %.40s", what,
			imperial_in(text.bytes));
		garden_fini(&garden);
		garden = (struct garden){ .arena = ARENA_EMPTY };
	}
}
END_TEST

/* ---- Cautions -------------------------------------------------------------------------------- */

/* "services, code": all words from the front. */
static void front(struct text *out)
{
	struct report report = report_to(NULL);
	const char *word, *sentences;

	for (int at = 0; (word = caution_next(&report, &at, &sentences));) {
		text_print(out, "%s%s", out->length ? ", " : "", word);
		ck_assert_int_eq(sentences[strlen(sentences) - 1], '.');
	}
}

static bool lists(const char *list, const char *word, size_t length)
{
	for (const char *c = list; (c = strstr(c, word)); c++)
		if ((c == list || c[-1] == ' ') && (c[length] == ',' || !c[length]))
			return true;
	return false;
}

static const struct { const char *rows[6]; const char *words; } cautioned[] = {
	{ { "..", NULL }, "" },
	{ { "pppp", NULL }, "services, licence, pits, dust, compactor, payload" },
	{ { "llll", NULL }, "services, pits, payload" },
	{ { "SS", NULL }, "services, code, pits, dust, compactor, lifting, tipping, payload" },
	{ { "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL }, "services, boundary, code, "
		"licence, pits, dust, compactor, adhesive, lifting, payload, soil" },
};

START_TEST(only_the_cautions_that_apply_are_at_the_front)
{
	struct text words = TEXT_EMPTY;

	garden_rows(&garden, cautioned[_i].rows);
	garden_count(&garden);
	front(&words);
	ck_assert_str_eq(words.bytes, cautioned[_i].words);
	text_fini(&words);
}
END_TEST

/* Everything that asks for a caution at once. */
static void lay_all(void)
{
	garden_rows(&garden, (const char *const[]){ "bbbbbbbbbpppllllmm", "bbbbbbbbbpppllllmm",
		"bbSbbbbbbpppllllmm", "bbbbbbbbbpppllllmm", "bbbbbbbbbpTpllllmm", NULL });
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, "3 in");
	plot_set(&garden.plot, 'm', LAWN_COVER, "seed");
	fences_run(&garden.plot, "0,0 18,0");
	fences_gate(&garden.plot, "8,0 12,0");
	fences_set(&garden.plot, FENCE_DEPTH, "5 ft");
}

START_TEST(each_caution_is_said_in_full_once_and_by_one_word_at_its_steps)
{
	struct text words = TEXT_EMPTY, at_steps = TEXT_EMPTY;

	lay_all();
	garden_count(&garden);
	struct report report = report_to(NULL);

	front(&words);
	ck_assert_str_eq(words.bytes, "services, boundary, code, licence, pits, auger, dust, saw, "
		"compactor, concrete, adhesive, timber, lifting, tipping, payload, soil");
	for (int i = 0; i < garden.takeoff.work.count; i++) {
		const char *said = caution_words(&report,
			1u << garden.takeoff.work.list[i].step);

		text_print(&at_steps, "%s%s", *said && at_steps.length ? ", " : "", said);
	}
	for (const char *c = words.bytes; *c; c += strcspn(c, ",") + (strchr(c, ',') ? 2 : 0)) {
		char word[20];

		snprintf(word, sizeof word, "%.*s", (int)strcspn(c, ","), c);
		ck_assert_msg(lists(at_steps.bytes, word, strlen(word)), "%s is at no step", word);
	}
	for (const char *c = at_steps.bytes; *c; c += strcspn(c, ",") + (strchr(c, ',') ? 2 : 0)) {
		char word[20];

		snprintf(word, sizeof word, "%.*s", (int)strcspn(c, ","), c);
		ck_assert_msg(lists(words.bytes, word, strlen(word)), "%s is not at the front",
			word);
	}
	text_fini(&words);
	text_fini(&at_steps);
}
END_TEST

/* The usual cautions of the trade: common practice, no published source, but for the rule on silica
 * dust: U.S. Occupational Safety and Health Administration, 29 CFR 1926.1153, Respirable
 * Crystalline Silica, Table 1 (title from memory). */
START_TEST(what_can_hurt_is_said)
{
	lay_all();
	say_all();
	says("wait the days that the local service asks");
	says("public lines only");
	says("private locator");
	says("Smell of gas: stop, leave, call.");
	says("Have its line agreed or surveyed before anything is built on it.");
	says("29 CFR 1926.1153, Table 1");
	says("Dry stone gives off silica dust: wet it, wear a respirator.");
	says("A plate stays 12 in from a fresh wall.");
	says("Fixtures are fixed against tipping");
	says("no slurry in drains.");
	says("Wet, it burns skin and eyes");
	says("Over 50 lb: two people or a trolley.");
	says("Concrete, bags 80.0 lb");
	says("Nobody in a trench more than 4 ft deep");
	says("never burnt");
	says("test it for lead");
	says("licensed practice");
	says("local code");
	says("payload");
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	say_all();
	says("Over 23 kg: two people or a trolley.");
	says("Nobody in a trench more than 1.2 m deep");
	says("A plate stays 300 mm from a fresh wall.");
	says_not("50 lb");
}
END_TEST

/* 80 lb yield 0.60 cu ft, 50 lb 0.375: as bags are sold, common practice, no published source. */
static const struct { const char *bag, *says, *says_not; } bags[] = {
	{ "0.6 cu ft", "Here: Concrete, bags 80.0 lb.", "Here: Concrete, bags 60" },
	{ "0.45 cu ft", "Here: Concrete, bags 60.0 lb.", "Concrete, bags 80" },
	{ "0.36 cu ft", "Set the posts", "two people or a trolley" },
};

START_TEST(a_bag_too_heavy_for_one_is_named_though_it_has_no_price)
{
	fences_ground(&garden.plot, 30, 10);
	fences_run(&garden.plot, "2,5 22,5");
	plot_set(&garden.plot, 0, ALLOW_CONCRETE_BAG, bags[_i].bag);
	say_all();
	says(bags[_i].says);
	says_not(bags[_i].says_not);
}
END_TEST

/* 50 lb in a plot in feet, 23 kg in one in metres: common practice, no published source. The block
 * is half a cubic foot, or a hundredth of a cubic metre. */
static const struct { const char *units, *cell, *block, *density; bool takes_two; } blocks[] = {
	{ "imperial", "1 ft", "1 ft x 6 in x 1 ft", "99.8 lb/cu ft", false },  /* 49.9 lb */
	{ "imperial", "1 ft", "1 ft x 6 in x 1 ft", "100 lb/cu ft", false },
	{ "imperial", "1 ft", "1 ft x 6 in x 1 ft", "100.2 lb/cu ft", true },  /* 50.1 lb */
	{ "metric", "500 mm", "500 mm x 200 mm x 100 mm", "2290 kg/m3", false }, /* 22.9 kg */
	{ "metric", "500 mm", "500 mm x 200 mm x 100 mm", "2300 kg/m3", false },
	{ "metric", "500 mm", "500 mm x 200 mm x 100 mm", "2310 kg/m3", true },  /* 23.1 kg */
};

START_TEST(what_one_person_lifts_is_reckoned_as_it_is_said)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 0, HEAD_UNITS, blocks[_i].units);
	plot_set(&garden.plot, 0, HEAD_CELL, blocks[_i].cell);
	plot_set(&garden.plot, 'b', BED_BLOCK, blocks[_i].block);
	plot_set(&garden.plot, 'b', BED_DENSITY, blocks[_i].density);
	say_all();
	says("Lay the walls");
	if (blocks[_i].takes_two)
		says("Here: Wall block");
	else
		says_not("Here: Wall block");
}
END_TEST

START_TEST(a_step_that_lifts_nothing_heavy_does_not_say_so)
{
	lay_all();
	plot_set(&garden.plot, 'b', BED_BLOCK, "12 in x 4 in x 4 in");
	garden_count(&garden);
	struct report report = report_to(NULL);

	for (int i = 0; i < garden.takeoff.work.count; i++) {
		const struct planned_step *step = &garden.takeoff.work.list[i];
		bool lifts = strstr(caution_words(&report, 1u << step->step), "lifting") != NULL;

		ck_assert_msg(lifts == (step->step == WORK_POSTS || step->step == WORK_FIXTURES ||
			step->step == WORK_FIXTURES_INSIDE), "%s", work_step_word(step->step));
	}
}
END_TEST

/* ---- Steps ----------------------------------------------------------------------------------- */

START_TEST(every_step_of_a_full_plot_says_what_to_do)
{
	lay_all();
	garden_count(&garden);
	struct report report = report_to(NULL);

	for (int i = 0; i < garden.takeoff.work.count; i++) {
		enum work_step step = garden.takeoff.work.list[i].step;
		const char *doing = step_doing(&report, step);

		ck_assert_uint_gt(strlen(step_title(&report, step)), 3);
		ck_assert(isupper((unsigned char)doing[0]));
		ck_assert_int_eq(doing[strlen(doing) - 1], '.');
	}
}
END_TEST

/* Four posts; holes of 10 1/2 in with 6 in of gravel, 0.3 cu ft each: a barrow holds it. */
START_TEST(a_step_says_people_hours_what_must_have_come_and_how_much_there_is_to_do)
{
	fences_ground(&garden.plot, 30, 10);
	fences_run(&garden.plot, "2,5 22,5");
	say_all();
	says(" Set the posts 2 + Fence post; Concrete, bags; Gravel under posts Set 4 posts; "
		"1 barrow load. Gravel");
	says(" Hang the panels 1 + Fence panel; Rail bracket Hang 3 panels. ");
	says(" Haul the spoil 1 0.3 - Load ");
	plot_set(&garden.plot, 0, ALLOW_CREW, "3");
	say_all();
	says(" Set the posts 3 + ");
}
END_TEST

/* The path is 3 cells and a half from the drop on the average; with cells of 300 mm that is
 * 1.05 m. */
START_TEST(with_a_drop_it_is_said_how_far_a_barrow_goes)
{
	garden_rectangle(&garden, 'p', 6, 1);
	say_all();
	says_not("each way");
	says_not("A barrow goes");
	garden.plot.details.around.has_drop = true;
	garden.plot.details.around.drop = (struct place){ 0, 1 };
	say_all();
	says(" Load 3.8 cu ft, push a barrow 14 ft; 2 barrow loads, 4 ft each way. ");
	says(" A barrow goes from the drop, at 0 in, 1 ft, to P1 4 ft. ");
	says("beyond the 164 ft that its rate has in it.");
	says("; barrow 0.000083 h per ft; ");
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	plot_set(&garden.plot, 0, HEAD_CELL, "300 mm");
	say_all();
	says(" barrow loads, 1.1 m each way. ");
	says(" A barrow goes from the drop, at 0 mm, 300 mm, to P1 1.1 m. ");
	says("beyond the 50 m that its rate has in it.");
}
END_TEST

START_TEST(a_plate_compactor_takes_two_people)
{
	garden_rectangle(&garden, 'p', 4, 4);
	say_all();
	says(" Tamp the ground 2 + ");
	says(" Lay the fabric 1 + ");
	plot_set(&garden.plot, 0, ALLOW_TAMPER, "hand");
	say_all();
	says(" Tamp the ground 1 + ");
}
END_TEST

/* By their sizes blocks are told in what is bought. */
START_TEST(blocks_of_several_sizes_are_named_once_where_they_must_be_there)
{
	garden_rows(&garden, (const char *const[]){ "bbbb.cccc", "bbbb.cccc", "bbbb.cccc",
		"bbbb.cccc", NULL });
	plot_set(&garden.plot, 'c', BED_BLOCK, "12 in x 8 in x 4 in");
	say_all();
	says(" Lay the walls 2 + Wall block; Adhesive, cartridge Lay ");
}
END_TEST

START_TEST(a_tool_of_several_steps_is_listed_once)
{
	const char *tools;

	lay_all();
	garden_count(&garden);
	struct report report = report_to(NULL);

	tools = work_tools(&report);
	ck_assert_ptr_nonnull(strstr(tools, "spade, pick"));
	for (const char *c = tools; *c; c += strcspn(c, ",") + (strchr(c, ',') ? 2 : 0)) {
		size_t length = strcspn(c, ",");
		char word[60];

		ck_assert_uint_gt(length, 2);
		snprintf(word, sizeof word, "%.*s", (int)length, c);
		for (const char *d = c + length; (d = strstr(d, word)); d++)
			ck_assert_msg(d[-2] != ',' || (d[length] && d[length] != ','),
				"%s is listed twice", word);
	}
	ck_assert(lists(tools, "broom", 5) && lists(tools, "hired block saw", 15));
}
END_TEST

static const struct {
	char letter;
	enum attribute attribute;
	const char *value, *says, *says_not;
} worded[] = {
	{ 'b', BED_LINER, "yes", "permeable filter fabric", "pond" },
	{ 'b', BED_LINER, "yes", "must run neither to a house nor to a neighbour", "\t" },
	{ 'b', BED_LINER, "no", " Fill the beds", "Line and fill" },
	{ 'b', BED_COURSES, "1", "Line and fill the beds", "cured as its label says" },
	{ 'b', BED_COURSES, "3", "cured as its label says, 24 hours where it says none", "\t" },
	{ 'b', BED_BUILD, "level", "Improve the soil of the beds", "Fill in layers" },
	{ 'b', BED_BUILD, "level", "Dig over the beds at ground level", "Loosen" },
	{ 'l', LAWN_COVER, "seed", "Sow the lawn", "Lay the lawn" },
	{ 'l', LAWN_COVER, "turf", "Lay the lawn", "Sow the lawn" },
	{ 'p', PATH_STONE, "clean", "rake it to its fall.", "Tamp stone with fines" },
	{ 'p', PATH_STONE, "fines", "Tamp stone with fines", "Tamp the spoil" },
	{ 'p', PATH_BASE, "4 in", "to the fall that their surface is to have", "Level under" },
	{ 'S', FIXTURE_HEIGHT, "1 ft", "Level under fixtures.", "Under paths" },
	{ 0, ALLOW_TAMPER, "hand", "hand tamper", "hired plate compactor" },
	{ 0, ALLOW_TAMPER, "plate", "hired plate compactor", "hand tamper" },
};

START_TEST(a_step_is_worded_by_what_the_plot_has)
{
	garden_rectangle(&garden, worded[_i].letter ? worded[_i].letter : 'p', 8, 4);
	plot_set(&garden.plot, worded[_i].letter, worded[_i].attribute, worded[_i].value);
	say_all();
	says(worded[_i].says);
	says_not(worded[_i].says_not);
}
END_TEST

/* ---- Hours ----------------------------------------------------------------------------------- */

static void rate(enum attribute kind, const char *words)
{
	struct scan s = scan_start(words, strlen(words), 1);
	struct value value;
	struct diag d;

	ck_assert(value_scan(&s, &attribute_row(kind)->rule, UNITS_IMPERIAL, &value, &d));
	block_set(&garden.plot.details.rates, kind, value);
}

START_TEST(hours_are_said_with_their_rate_and_who_gave_it)
{
	garden_rectangle(&garden, 'p', 10, 10);
	plot_set(&garden.plot, 0, ALLOW_CREW, "2");
	rate(RATE_TAMP, "0.03 h per sq-ft");
	say_all();
	says(" Tamp the ground 2 3.0 - Tamp 100.0 sq ft of ground.");
	says("; tamp 0.0300 h per sq ft (the plot);");
	says("dig 0.0623 h per cu ft;");
	says("+: work with no rate; give yours, one a line of the plot: rate fabric N h per "
		"sq-ft.");
	says("are common practice, no published source: a rule of thumb.");
	says_not("no published rate");
}
END_TEST

START_TEST(without_usual_rates_their_source_is_not_named)
{
	garden_rectangle(&garden, 'S', 2, 2);
	for (enum attribute a = RATE_STRIP; a <= RATE_BASE; a++)
		if (attribute_row(a)->rule.quantity == QUANTITY_HOURS_VOLUME)
			rate(a, "1 h per m3");
	rate(RATE_STRIP, "1 h per m2");
	rate(RATE_FIXTURE, "1 h per each");
	say_all();
	says(" Set the fixtures 2 1.0 - Set 1 fixture.");
	says_not("rule of thumb");
}
END_TEST

START_TEST(extra_goods_are_named_where_they_are_got)
{
	garden_rectangle(&garden, 'p', 2, 2);
	details_add_extra(&garden.plot.details, memory_string("Marking paint"),
		(struct amount){ 2 * MILLION, AMOUNT_GOODS_EACH });
	say_all();
	says("Marking paint");
	says("Have at hand what the plot lists as extra.");
	says("boards, stakes, string, paint, compactor hire, tools");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("work words");
	TCase *lacks = suite_case(suite, "lacks"), *cautions = suite_case(suite, "cautions");
	TCase *steps = suite_case(suite, "steps"), *hours = suite_case(suite, "hours");

	tcase_add_checked_fixture(lacks, setup, teardown);
	tcase_add_checked_fixture(cautions, setup, teardown);
	tcase_add_checked_fixture(steps, setup, teardown);
	tcase_add_checked_fixture(hours, setup, teardown);
	tcase_add_loop_test(lacks, a_plot_of_one_thing_names_no_other, 0,
		sizeof single / sizeof *single);
	tcase_add_test(lacks, a_fence_alone_names_nothing_else);
	tcase_add_test(lacks, random_plots_name_only_what_they_have_in_their_own_units);
	tcase_add_loop_test(cautions, only_the_cautions_that_apply_are_at_the_front, 0,
		sizeof cautioned / sizeof *cautioned);
	tcase_add_test(cautions, each_caution_is_said_in_full_once_and_by_one_word_at_its_steps);
	tcase_add_test(cautions, what_can_hurt_is_said);
	tcase_add_loop_test(cautions, a_bag_too_heavy_for_one_is_named_though_it_has_no_price, 0,
		sizeof bags / sizeof *bags);
	tcase_add_loop_test(cautions, what_one_person_lifts_is_reckoned_as_it_is_said, 0,
		sizeof blocks / sizeof *blocks);
	tcase_add_test(cautions, a_step_that_lifts_nothing_heavy_does_not_say_so);
	tcase_add_test(steps, every_step_of_a_full_plot_says_what_to_do);
	tcase_add_test(steps,
		a_step_says_people_hours_what_must_have_come_and_how_much_there_is_to_do);
	tcase_add_test(steps, blocks_of_several_sizes_are_named_once_where_they_must_be_there);
	tcase_add_test(steps, with_a_drop_it_is_said_how_far_a_barrow_goes);
	tcase_add_test(steps, a_plate_compactor_takes_two_people);
	tcase_add_test(steps, a_tool_of_several_steps_is_listed_once);
	tcase_add_loop_test(steps, a_step_is_worded_by_what_the_plot_has, 0,
		sizeof worded / sizeof *worded);
	tcase_add_test(hours, hours_are_said_with_their_rate_and_who_gave_it);
	tcase_add_test(hours, without_usual_rates_their_source_is_not_named);
	tcase_add_test(hours, extra_goods_are_named_where_they_are_got);
	return suite;
}
