/* The parts of the takeoff: how they are asked for, that each can be handed over alone, and that
 * all of them together say what the whole says. */
#include "support/book.h"
#include "support/details.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/lines.h"
#include "support/runner.h"
#include "support/sample_gardens.h"
#include "report/text/print.h"
#include "report/words/first_line.h"

#include <ctype.h>
#include <locale.h>
#include <stdio.h>
#include <string.h>

static struct garden garden;
static struct text all, alone[PARTS]; /* alone: each part by itself */

static void setup(void)
{
	/* For the widths of what users type. */
	ck_assert_ptr_nonnull(setlocale(LC_CTYPE, "C.UTF-8"));
	garden = (struct garden){ .arena = ARENA_EMPTY };
	all = TEXT_EMPTY;
	memset(alone, 0, sizeof alone);
}

static void teardown(void)
{
	text_fini(&all);
	for (int part = 0; part < PARTS; part++)
		text_fini(&alone[part]);
	garden_fini(&garden);
}

static void print_as(struct text *text, const char *name, unsigned parts)
{
	text_clear(text);
	garden_print(&garden, text, name, parts);
}

static void print_to(struct text *text, unsigned parts)
{
	print_as(text, "any.plot", parts);
}

static void print(void)
{
	garden_count(&garden);
	print_to(&all, PARTS_ALL);
	for (int part = 0; part < PARTS; part++)
		print_to(&alone[part], 1u << part);
}

/* ---- Words ----------------------------------------------------------------------------------- */

START_TEST(each_part_is_asked_for_by_a_word_of_its_own)
{
	struct text words = TEXT_EMPTY;
	const char *unknown;
	size_t length;
	unsigned parts;

	for (int part = 0; part < PARTS; part++) {
		const char *word = part_word((enum part)part);

		ck_assert(parts_read(word, &parts, &unknown, &length));
		ck_assert_uint_eq(parts, 1u << part);
		ck_assert_uint_gt(strlen(part_title((enum part)part)), 3);
		ck_assert_uint_gt(strlen(part_tells((enum part)part)), 3);
		text_print(&words, "%s%s", part ? "," : "", word);
		ck_assert(parts_read(words.bytes, &parts, &unknown, &length));
		ck_assert_uint_eq(parts, (2u << part) - 1);
	}
	/* The set-out sheet is a paper of its own. */
	ck_assert_uint_eq(parts, PARTS_ALL | 1u << PART_SETOUT);
	ck_assert(parts_read("fence,walls,fence", &parts, &unknown, &length));
	ck_assert_uint_eq(parts, 1u << PART_FENCE | 1u << PART_WALLS);
	text_fini(&words);
}
END_TEST

static const struct {
	const char *words;
	size_t at, length;
} unknowns[] = {
	{ "roof", 0, 4 }, { "", 0, 0 }, { ",", 0, 0 }, { "walls,", 6, 0 }, { ",walls", 0, 0 },
	{ "walls,roof,fence", 6, 4 }, { "walls fence", 0, 11 }, { "wall", 0, 4 },
	{ "wallsy", 0, 6 }, { "Walls", 0, 5 }, { "walls,,fence", 6, 0 }, { "fence,list", 6, 4 },
};

START_TEST(what_is_no_part_is_pointed_at)
{
	const char *words = unknowns[_i].words, *unknown = NULL;
	size_t length = 99;
	unsigned parts;

	ck_assert(!parts_read(words, &parts, &unknown, &length));
	ck_assert_ptr_eq(unknown, words + unknowns[_i].at);
	ck_assert_uint_eq(length, unknowns[_i].length);
}
END_TEST

/* ---- Every part by itself -------------------------------------------------------------------- */

/* Adds the words without blanks, ends of lines and dashes: wherever they are broken, with a rule
 * between them or without. */
static void add_bare(struct text *bare, const char *words)
{
	for (; *words; words++)
		if (!strchr(" \n-", *words))
			text_add_bytes(bare, words, 1);
}

static const char *behind_first_line(const struct text *text)
{
	ck_assert(report_is_takeoff(text->bytes, text->length));
	return strchr(text->bytes, '\n') + 1;
}

/* It says what the plot lacks, and no more: its words begin on a line of their own. */
static bool is_left_out(int part)
{
	const char *lacks = part_lacks((enum part)part);
	char first[24];

	if (!lacks)
		return false;
	snprintf(first, sizeof first, "\n%s", lacks);
	return strstr(alone[part].bytes, first) != NULL;
}

/* What a part says of the plot. */
static const char *said(int part)
{
	return is_left_out(part) ? "" : behind_first_line(&alone[part]);
}

/* The title of the plot and its file; before them that of the part, but on the front. */
static void has_head(int part)
{
	const struct value *set = block_value(&garden.plot.details.head, HEAD_TITLE);
	const char *title = set->set ? set->as.text : "";
	const char *const marks[] = { "", "(INCOMPLETE)" };
	struct text found = TEXT_EMPTY, expected = TEXT_EMPTY;
	bool has = false;

	add_bare(&found, said(part));
	for (int i = 0; i < 2 && !has; i++) {
		text_clear(&expected);
		add_bare(&expected, part == PART_FRONT ? "" : part_title((enum part)part));
		add_bare(&expected, marks[i]);
		add_bare(&expected, title);
		add_bare(&expected, part == PART_FRONT ? "Plan" : *title ? "," : "");
		add_bare(&expected, "any.plot");
		has = strncmp(found.bytes, expected.bytes, expected.length) == 0;
	}
	ck_assert_msg(has, "%s: %.200s", part_word((enum part)part), alone[part].bytes);
	text_fini(&found);
	text_fini(&expected);
}

/* Whether something stands in the plot or the takeoff that a part is about. */
static bool has_anything(int part)
{
	const struct takeoff *takeoff = &garden.takeoff;
	bool has_beds = false, has_ground = false, has_raised = takeoff->walls.count > 0 ||
		takeoff->walls.not_laid_count > 0;

	for (int i = 0; i < takeoff->survey.region_count; i++) {
		const struct entry *entry = takeoff->survey.regions[i].entry;

		has_ground = has_ground || entry;
		has_beds = has_beds || (entry && entry->class == CLASS_BED);
	}
	switch ((enum part)part) {
	case PART_FRONT: case PART_SHOPPING: case PART_AREAS:
		return true;
	case PART_PROGRAMME:
		return takeoff->work.count > 0;
	case PART_LEVELS:
		return takeoff->levelling.is_told;
	case PART_SERVICES:
		return takeoff->services.count + takeoff->services.kept_count > 0;
	case PART_DIG:
		return takeoff->earthwork.count > 0 || takeoff->stones.count > 0 ||
			takeoff->edging.runs > 0;
	case PART_WALLS:
		return has_beds;
	case PART_FILL:
		return takeoff->fills.count > 0;
	case PART_FENCE:
		return takeoff->fences.count > 0;
	case PART_LAWN:
		return takeoff->lawns.count > 0;
	case PART_PLANTING:
		return takeoff_has(takeoff, SUBJECT_PLANTS);
	case PART_WATERING:
		return takeoff->watering.count > 0;
	case PART_ADVICE:
		return has_raised || takeoff->fences.count > 0;
	case PART_SETOUT: case PART_ASSUMED:
		return has_ground || takeoff->fences.count > 0;
	}
	return false;
}

static void each_is_a_paper_or_left_out(const char *what)
{
	for (int part = 0; part < PARTS; part++) {
		ck_assert_msg(is_left_out(part) != has_anything(part), "%s: %s", what,
			part_word((enum part)part));
		lines_check(alone[part].bytes, what);
		if (!is_left_out(part))
			has_head(part);
	}
}

/* ---- All of them together -------------------------------------------------------------------- */

/* The next word with a digit in it; NULL: there is no more. */
static const char *next_figure(const char *c, size_t *length)
{
	for (; *(c += strspn(c, " \n")); c += *length) {
		*length = strcspn(c, " \n");
		if (strcspn(c, "0123456789") < *length)
			return c;
	}
	return NULL;
}

/* Every figure up to there stands in the parts too, and in the same order: what they say besides
 * explains. */
static void says_all(const char *part, const char *figures, const char *end,
	const char *what)
{
	size_t length, found;

	for (const char *c = figures; (c = next_figure(c, &length)) && c < end; c += length) {
		while ((part = next_figure(part, &found)) &&
			(found != length || strncmp(part, c, length) != 0))
			part += found;
		ck_assert_msg(part, "%s: no part has this: %.80s", what, c);
		part += found;
	}
}

/* What is assumed is run together in the whole, and has a line for each value by itself. */
static void parts_say_the_whole(const char *what)
{
	const char *assumed = said(PART_ASSUMED);
	const char *end = all.bytes + all.length;
	struct text parts = TEXT_EMPTY;
	char head[200];
	size_t length;

	for (int part = 0; part < PART_ASSUMED; part++)
		text_add(&parts, said(part));
	snprintf(head, sizeof head, "%.*s\n", *assumed ? (int)strcspn(assumed + 1, "\n") + 1 : 0,
		assumed);
	if (*assumed)
		end = strstr(all.bytes, head);
	ck_assert_msg(end, "%s: %s", what, head);
	says_all(parts.bytes, behind_first_line(&all), end, what);
	for (const char *c = end; (c = next_figure(c, &length)); c += length) {
		char figure[200];

		while (length > 1 && strchr(".:;,", c[length - 1]))
			length--;
		snprintf(figure, sizeof figure, "%.*s", (int)length, c);
		ck_assert_msg(strstr(assumed, figure), "%s: not assumed: %s", what, figure);
	}
	text_fini(&parts);
}

/* The whole has no advice where nothing would be spared; by itself that is said. */
static bool is_idle_advice(int part)
{
	return part == PART_ADVICE && strstr(alone[part].bytes,
		"\nNo small change that was tried would spare anything.\n");
}

/* Each part of the whole begins as it does by itself. */
static void whole_has_their_heads(const char *what)
{
	const char *at = all.bytes;

	for (int part = 0; part < PARTS; part++) {
		const char *head = said(part);
		char line[200];

		if (!*head || !(PARTS_ALL & (1u << part)))
			continue;
		if (is_idle_advice(part)) {
			ck_assert_ptr_null(strstr(all.bytes, "\nAdvice -"));
			continue;
		}
		snprintf(line, sizeof line, "%.*s\n", (int)strcspn(head + 1, "\n") + 1, head);
		at = strstr(at, line);
		ck_assert_msg(at, "%s: %s", what, part_word((enum part)part));
	}
}

/* Several parts are what each of them is. */
static void several_are_each(struct random *random, const char *what)
{
	unsigned parts = (unsigned)random_below(random, PARTS_ALL);
	struct text several = TEXT_EMPTY, each = TEXT_EMPTY;

	print_to(&several, parts);
	for (int part = 0; part < PARTS; part++)
		if (parts & 1u << part)
			text_add(&each, behind_first_line(&alone[part]));
	text_add(&each, "");
	ck_assert_msg(strcmp(behind_first_line(&several), each.bytes) == 0, "%s: parts %x", what,
		parts);
	text_fini(&several);
	text_fini(&each);
}

/* ---- What is in no total --------------------------------------------------------------------- */

enum { OF_WALLS = 1u << PART_LEVELS | 1u << PART_DIG | 1u << PART_FILL | 1u << PART_WATERING };
enum { OF_CAPS = 1u << PART_SHOPPING | 1u << PART_PROGRAMME | 1u << PART_WALLS };

/* A wall that is not laid out lacks in the dig, the stone and the soil as well; a cap only in what
 * is bought and laid. Neither lacks in a fence or a lawn. */
static const struct {
	const char *block, *cap;
	unsigned incomplete;
} lacking[] = {
	{ "16 in x 8 in x 6 in", "none", 0 },
	{ "16 in x 8 in x 6 in", "3 ft x 3 ft x 2 in", OF_CAPS },
	{ "3 ft x 2 ft x 6 in", "none", OF_WALLS | OF_CAPS },
};

START_TEST(only_a_part_that_lacks_figures_is_marked_as_incomplete)
{
	garden_rows(&garden, (const char *[]){ "bbbb.cccccc", "bbbb.cccccc", "bbbb.cccccc",
		"bbbb.cccccc", "llll.......", NULL });
	plot_set(&garden.plot, 'b', BED_BLOCK, lacking[_i].block);
	plot_set(&garden.plot, 'b', BED_CAP, lacking[_i].cap);
	plot_set(&garden.plot, 'c', BED_WATER, "drip");
	fences_run(&garden.plot, "0,0 11,0");
	garden.plot.details.finish.has_level = true;
	print();
	for (int part = PART_SHOPPING; part < PARTS; part++) {
		bool is_marked = strstr(said(part), " (INCOMPLETE) ---");

		ck_assert(is_left_out(part) == (part == PART_SERVICES || part == PART_PLANTING));
		ck_assert_msg(is_marked == (lacking[_i].incomplete >> part & 1u), "%s",
			part_word((enum part)part));
	}
}
END_TEST

/* ---- What to mind ---------------------------------------------------------------------------- */

/* Whether the front says in full what a word reminds of. */
static bool is_in_front(const char *word, size_t length)
{
	char line[80];

	snprintf(line, sizeof line, "\n%c%.*s: ", toupper((unsigned char)*word),
		(int)length - 1, word + 1);
	return strstr(alone[PART_FRONT].bytes, line);
}

/* Every "Mind: dust, saw." of a part. Returns how many words there are. */
static int minded(int part, const char *what)
{
	int count = 0;

	for (const char *c = alone[part].bytes; (c = strstr(c, "Mind: "));) {
		c += strlen("Mind: ");
		for (size_t length = 0;; c += strspn(c, ", \n")) {
			length = strspn(c, "abcdefghijklmnopqrstuvwxyz");
			ck_assert_msg(length > 0 && is_in_front(c, length), "%s, %s: %.*s", what,
				part_word((enum part)part), (int)length, c);
			count++;
			c += length;
			if (*c == '.')
				break;
			ck_assert_msg(*c == ',', "%s: %.40s", what, c);
		}
	}
	return count;
}

static bool has_step(enum work_step step)
{
	const struct work *work = &garden.takeoff.work;

	for (int i = 0; i < work->count; i++)
		if (work->list[i].step == step)
			return true;
	return false;
}

static void all_that_is_minded_is_in_front(const char *what)
{
	int words[PARTS];

	for (int part = 0; part < PARTS; part++)
		words[part] = minded(part, what);
	ck_assert_int_eq(words[PART_FRONT] + words[PART_AREAS] + words[PART_ASSUMED], 0);
	/* Beds are dug and filled in gloves, holes are near lines. */
	ck_assert(is_left_out(PART_DIG) || words[PART_DIG] > 0);
	ck_assert(!(has_step(WORK_FILL) || has_step(WORK_MULCH)) || words[PART_FILL] > 0);
	ck_assert(!(garden.takeoff.work.facts & FACT(POSTS)) || words[PART_FENCE] > 0);
}

/* Of the court, which has something of everything but plants: "" for a part that goes by no
 * step. */
static const char *const minds[PARTS] = {
	[PART_FRONT] = "", [PART_SHOPPING] = "payload", [PART_PROGRAMME] = "",
	[PART_SETOUT] = "services, boundary",
	[PART_LEVELS] = "",
	[PART_SERVICES] = "",
	[PART_DIG] = "services, pits, auger, dust, compactor, payload",
	[PART_WALLS] = "boundary, code, dust, saw, adhesive, soil",
	[PART_FILL] = "soil",
	[PART_FENCE] = "boundary, code, dust, concrete, timber, lifting", [PART_LAWN] = "",
	[PART_PLANTING] = "",
	[PART_WATERING] = "",
	[PART_ADVICE] = "", [PART_AREAS] = "", [PART_ASSUMED] = "",
};

START_TEST(a_part_reminds_in_a_word_of_what_its_work_asks_for)
{
	char expected[120];

	garden_file(&garden, "plots/court.plot");
	garden_count(&garden);
	snprintf(expected, sizeof expected, ", court.plot\nMind: %s. In full: --only front.\n",
		minds[_i]);
	print_as(&alone[_i], "court.plot", 1u << _i);
	if (*minds[_i])
		ck_assert_msg(strstr(alone[_i].bytes, expected), "%s", expected);
	else
		ck_assert_ptr_null(strstr(alone[_i].bytes, "court.plot\nMind: "));
}
END_TEST

/* Whoever has one paper alone does not see the front. */
START_TEST(a_part_by_itself_tells_where_a_caution_is_in_full)
{
	garden_file(&garden, "plots/court.plot");
	garden_count(&garden);
	print_as(&all, "court.plot", 1u << PART_DIG | 1u << PART_PROGRAMME);
	ck_assert_ptr_nonnull(strstr(all.bytes, ", payload. In full: --only front.\n"));
	ck_assert_ptr_nonnull(strstr(all.bytes, "\nWhat to mind, in full: --only front. Hours "));
	print_as(&all, "court.plot", PARTS_ALL);
	ck_assert_ptr_nonnull(strstr(all.bytes, ", payload.\n"));
	ck_assert_ptr_null(strstr(all.bytes, "--only front"));
}
END_TEST

/* ---- Plots ----------------------------------------------------------------------------------- */

static void check(struct random *random, const char *what)
{
	print();
	each_is_a_paper_or_left_out(what);
	parts_say_the_whole(what);
	whole_has_their_heads(what);
	several_are_each(random, what);
	all_that_is_minded_is_in_front(what);
}


START_TEST(the_parts_of_a_sample_are_papers_and_say_all)
{
	struct random random = { 11 };
	char path[80];

	snprintf(path, sizeof path, "plots/%s.plot", sample_gardens[_i]);
	garden_file(&garden, path);
	check(&random, sample_gardens[_i]);
}
END_TEST

enum { ROUNDS = 60 };

/* Open ground, or all that a plot may have, named and noted in any characters. */
START_TEST(the_parts_of_any_plot_are_papers_and_say_all)
{
	struct random random = { 71 };
	int left_out[PARTS] = { 0 };

	for (int round = 0; round < ROUNDS; round++) {
		char what[24];

		snprintf(what, sizeof what, "round %d", round);
		if (round % 3)
			whole_plot_at_random(&garden.plot, &random, 12);
		else
			plot_at_random(&garden.plot, &random, 12, round % 2 ? "bl" : "..pS");
		garden.has_book = random_below(&random, 2) == 0;
		if (garden.has_book)
			book_at_random(&garden.book, &random, "16 in x 8 in x 6 in");
		check(&random, what);
		for (int part = 0; part < PARTS; part++)
			left_out[part] += is_left_out(part);
		teardown();
		setup();
	}
	/* Both were tried of each part that may have nothing to say. */
	for (int part = 0; part < PARTS; part++)
		ck_assert_int_lt(left_out[part], ROUNDS);
	for (int part = PART_WALLS; part <= PART_LAWN; part++)
		ck_assert_msg(left_out[part] > 0, "%s", part_word((enum part)part));
	plot_init(&garden.plot);
}
END_TEST

/* ---- Nothing to say -------------------------------------------------------------------------- */

/* What is left of a lawn alone, and of nothing at all. */
static const struct {
	const char *row;
	unsigned parts;
} few[] = {
	{ "....", 1u << PART_FRONT | 1u << PART_SHOPPING | 1u << PART_AREAS },
	{ "llll", 1u << PART_FRONT | 1u << PART_SHOPPING | 1u << PART_PROGRAMME |
		1u << PART_SETOUT | 1u << PART_DIG | 1u << PART_LAWN | 1u << PART_AREAS |
		1u << PART_ASSUMED },
	{ "pppp", 1u << PART_FRONT | 1u << PART_SHOPPING | 1u << PART_PROGRAMME |
		1u << PART_SETOUT | 1u << PART_DIG | 1u << PART_AREAS | 1u << PART_ASSUMED },
};

START_TEST(a_part_with_nothing_to_say_is_left_out)
{
	garden_rows(&garden, (const char *[]){ few[_i].row, NULL });
	print();
	for (int part = 0; part < PARTS; part++) {
		char head[80];
		bool is_there = few[_i].parts & 1u << part;
		bool is_in_whole = is_there && (PARTS_ALL & 1u << part);

		snprintf(head, sizeof head, "\n%s --", part_title((enum part)part));
		ck_assert_msg(is_left_out(part) != is_there, "%s", part_word((enum part)part));
		ck_assert(part == PART_FRONT || (strstr(all.bytes, head) != NULL) ==
			is_in_whole);
	}
}
END_TEST

static int lines_of(const char *text)
{
	int lines = 0;

	for (const char *c = text; *c; c++)
		lines += *c == '\n';
	return lines;
}

/* A garden of 16 by 13 ft: 732 lines before there were parts. The first line and the blank one
 * before the head are no part of the list. */
START_TEST(a_small_garden_takes_few_lines)
{
	garden_file(&garden, "plots/court.plot");
	garden_count(&garden);
	print_as(&all, "court.plot", PARTS_ALL);
	ck_assert_int_le(lines_of(all.bytes), 300);
	print_as(&alone[PART_SHOPPING], "court.plot", 1u << PART_SHOPPING);
	ck_assert_int_le(lines_of(alone[PART_SHOPPING].bytes) - 2, 40);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("parts");
	TCase *words = suite_case(suite, "words"), *papers = suite_case(suite, "papers");

	tcase_add_test(words, each_part_is_asked_for_by_a_word_of_its_own);
	tcase_add_loop_test(words, what_is_no_part_is_pointed_at, 0,
		sizeof unknowns / sizeof *unknowns);
	tcase_add_checked_fixture(papers, setup, teardown);
	tcase_add_loop_test(papers, the_parts_of_a_sample_are_papers_and_say_all, 0,
		SAMPLE_GARDENS);
	tcase_add_test(papers, the_parts_of_any_plot_are_papers_and_say_all);
	tcase_add_loop_test(papers, a_part_reminds_in_a_word_of_what_its_work_asks_for, 0, PARTS);
	tcase_add_test(papers, a_part_by_itself_tells_where_a_caution_is_in_full);
	tcase_add_test(papers, a_small_garden_takes_few_lines);
	tcase_add_loop_test(papers, only_a_part_that_lacks_figures_is_marked_as_incomplete, 0,
		sizeof lacking / sizeof *lacking);
	tcase_add_loop_test(papers, a_part_with_nothing_to_say_is_left_out, 0,
		sizeof few / sizeof *few);
	return suite;
}
