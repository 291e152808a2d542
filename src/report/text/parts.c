#include "report/text/parts.h"
#include "report/text/paged.h"
#include "report/text/print.h"
#include "report/words/caution_words.h"
#include "report/words/first_line.h"

#include <string.h>

enum { SECTIONS_MOST = 4 };

/* What has to be laid out for the figures of a part to be all there. */
enum rests_on { NOTHING, ALL_WALLS, ALL_WALLS_AND_CAPS };

#define AT(step) (1u << WORK_##step)

static const struct part_row {
	const char *word, *title, *tells;
	enum rests_on rests_on;
	unsigned steps; /* of the work that goes by it: their cautions are named */
	void (*sections[SECTIONS_MOST])(const struct report *);
	const char *lacks; /* what the plot lacks where the part has nothing to say; NULL: it has */
} rows[] = {
	[PART_FRONT] = { "front", "Front", "plan, snags and cautions", NOTHING, 0,
		{ print_front }, NULL },
	[PART_SHOPPING] = { "shopping", "Shopping", "what to order, day by day",
		ALL_WALLS_AND_CAPS, AT(HAUL), { print_shopping }, NULL },
	[PART_PROGRAMME] = { "programme", "Programme", "the order of work",
		ALL_WALLS_AND_CAPS, 0, { print_programme },
		"Nothing is built, filled or laid: there is no work." },
	[PART_SETOUT] = { "setout", "Set-out", "strings and offsets", NOTHING,
		AT(SET_OUT), { print_setout },
		"There is nothing to set out: all ground is open." },
	[PART_LEVELS] = { "levels", "Levels", "drops, cut and fill, falls",
		ALL_WALLS, AT(DIG) | AT(TAMP), { print_levels },
		"No level of the ground is told, nor a fall: it counts as level. In the plot "
		"levels, finish or fall, in the editor Measure levels." },
	[PART_SERVICES] = { "services", "Services", "lines in the ground",
		NOTHING, AT(STRIP) | AT(SLEEVES), { print_services, print_by_hand,
		print_trenches },
		"No line in the ground is told, nor what is kept: in the plot service or keep, "
		"in the editor Lay a service line or Keep a tree." },
	[PART_DIG] = { "dig", "Dig and stone", "what is dug and laid on it",
		ALL_WALLS, AT(STRIP) | AT(DIG) | AT(HAUL) | AT(TAMP) | AT(FABRIC) | AT(BASE) |
		AT(EDGING) | AT(SURFACE), { print_dig, print_stone, print_fabric, print_edging },
		"Nothing is dug, and no stone is laid: there is no path, lawn or fixture, nor a "
		"bed that asks for it." },
	[PART_WALLS] = { "walls", "Walls", "how blocks are laid and cut",
		ALL_WALLS_AND_CAPS, AT(WALLS) | AT(BACKFILL),
		{ print_beds, print_wall_levels, print_walls, print_cutting },
		"No bed has a wall (build raised)." },
	[PART_FILL] = { "fill", "Filling the beds", "liner, soil and mulch",
		ALL_WALLS, AT(FILL) | AT(MULCH), { print_liner, print_fill },
		"No bed is filled, lined or mulched." },
	[PART_FENCE] = { "fence", "Fence", "posts, panels and gates",
		NOTHING, AT(POSTS) | AT(PANELS), { print_fence },
		"There is no fence." },
	[PART_LAWN] = { "lawn", "Lawn", "turf and seed", NOTHING, AT(LAWN), { print_lawn },
		"There is no lawn." },
	[PART_PLANTING] = { "planting", "Planting", "what grows where",
		NOTHING, AT(PLANTS), { print_planting, print_planted, print_first_year },
		"No plant is told: in the plot plant, with at or drift, in the editor New "
		"plant." },
	[PART_WATERING] = { "watering", "Watering", "drip lines and minutes",
		ALL_WALLS, AT(SLEEVES) | AT(WATER),
		{ print_water, print_drip, print_water_weeks, print_header },
		"No bed is watered by drip lines. One is that says so: Watered, drip, on its "
		"card, or a line of its entry in the plot, water drip. A raised bed whose wall "
		"is not laid out has none." },
	[PART_ADVICE] = { "advice", "Advice", "what small changes spare", NOTHING, 0,
		{ print_advice },
		"There is nothing that a small change could spare." },
	[PART_AREAS] = { "areas", "Areas and edges", "how much of each ground",
		NOTHING, 0, { print_titled, print_areas, print_names, print_edges }, NULL },
	[PART_ASSUMED] = { "assumed", "Assumed", "what all this rests on", NOTHING, 0,
		{ print_assumed },
		"No figure rests on a value that was set or assumed." },
};
_Static_assert(sizeof rows / sizeof *rows == PARTS, "each part has a row");

const char *part_word(enum part part)
{
	return rows[part].word;
}

const char *part_title(enum part part)
{
	return rows[part].title;
}

const char *part_tells(enum part part)
{
	return rows[part].tells;
}

const char *part_lacks(enum part part)
{
	return rows[part].lacks;
}

static bool is_word(const char *words, size_t length, const char *word)
{
	return strlen(word) == length && strncmp(words, word, length) == 0;
}

bool parts_read(const char *words, unsigned *parts, const char **unknown, size_t *length)
{
	for (*parts = 0;; words += *length + 1) {
		int part = 0;

		*length = strcspn(words, ",");
		while (part < PARTS && !is_word(words, *length, rows[part].word))
			part++;
		*unknown = words;
		if (part == PARTS)
			return false;
		*parts |= 1u << part;
		if (!words[*length])
			return true;
	}
}

/* ---- Printing -------------------------------------------------------------------------------- */

/* Prints the head of a part before the first byte of it, so that one without a word has none. */
struct part_sink {
	struct sink sink; /* first */
	const struct report *report;
	struct paged_sink *paged; /* that the report goes to; NULL: none */
	enum part part;
	bool is_begun, has_nothing; /* to say but what the plot lacks */
};

static bool is_complete(const struct takeoff *takeoff, enum rests_on rests_on)
{
	return rests_on == NOTHING || (rests_on == ALL_WALLS ?
		takeoff->walls.not_laid_count == 0 : takeoff->complete);
}

/* With an arena of its own: whoever prints may hold words. */
static void begin_part(struct part_sink *part)
{
	struct arena words = ARENA_EMPTY;
	struct report report = *part->report;
	const struct part_row *row = &rows[part->part];
	const char *mind, *title, *of;

	part->is_begun = true;
	report.words = &words;
	title = is_complete(report.takeoff, row->rests_on) ? row->title :
		say(&report, "%s (INCOMPLETE)", row->title);
	of = plot_named(&report);
	mind = part->has_nothing ? "" : caution_words(&report, row->steps);
	if (part->paged)
		paged_part(part->paged, title, of);
	if (part->part != PART_FRONT)
		page_rule(report.out, title, of);
	if (*mind)
		print_lines(&report, 0, 2, "Mind: %s.%s", mind,
			report.is_whole ? "" : " In full: --only front.");
	arena_clear(&words);
}

/* Where all parts are printed the rule parts them: no blank line after it. */
static void write_part(struct sink *sink, const char *bytes, size_t length)
{
	struct part_sink *part = (struct part_sink *)sink;

	if (!part->is_begun) {
		begin_part(part);
		if (part->report->is_whole && part->part != PART_FRONT && *bytes == '\n') {
			bytes++;
			length--;
		}
	}
	sink_add_bytes(part->report->out, bytes, length);
}

static void print_part(const struct report *report, struct paged_sink *paged, enum part part)
{
	struct part_sink out = { .sink = { write_part }, .report = report, .paged = paged,
		.part = part };
	struct report inside = *report;

	inside.out = &out.sink;
	for (int i = 0; i < SECTIONS_MOST && rows[part].sections[i]; i++) {
		rows[part].sections[i](&inside);
		arena_clear(report->words);
	}
	out.has_nothing = !out.is_begun;
	if (out.has_nothing && !report->is_whole && rows[part].lacks)
		print_lines(&inside, 0, 0, "%s", rows[part].lacks);
}

void report_text(struct sink *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name, unsigned parts)
{
	struct arena words = ARENA_EMPTY;
	struct report report = report_of(out, &words, plot, takeoff, name);
	struct paged_sink paged = paged_sink(out);
	bool is_paged = (parts & PARTS_PAGED) != 0;

	report.is_whole = (parts & PARTS_ALL) == PARTS_ALL;
	report.out = is_paged ? &paged.sink : out;
	sink_print(report.out, "%s %d\n", FIRST_LINE_TEXT, FIRST_LINE_VERSION);
	for (int part = 0; part < PARTS; part++)
		if (parts & (1u << part))
			print_part(&report, is_paged ? &paged : NULL, (enum part)part);
	paged_fini(&paged);
	arena_clear(&words);
}
