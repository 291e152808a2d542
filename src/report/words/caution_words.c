#include "report/words/caution_words.h"
#include "report/words/item_words.h"
#include "report/words/phrases.h"

#include <string.h>

#define AT(step) (1u << WORK_##step)
#define STONE (FACT(BASE) | FACT(PATHS))
#define FENCE (FACT(POSTS) | FACT(PANELS))
#define FILLED (FACT(RAISED) | FACT(REPLACED) | FACT(AMENDED))

/* A part of a caution; parts of one follow each other. */
struct caution {
	const char *word;
	unsigned steps; /* AT(...) of those where the word is said */
	struct phrase says;
};

enum { LIFTING_STEPS = AT(FIXTURES_INSIDE) | AT(FIXTURES) };
static const char lifting[] = "lifting";

static const struct caution cautions[] = {
	{ "services", AT(STRIP) | AT(SET_OUT) | AT(DIG) | AT(SLEEVES) | AT(PLANTS) | AT(WATER), {
		.all = FACT(CORE), .words =
		"Before any digging have services marked, and wait the days that the local service "
		"asks. Marks cover public lines only, and expire: private water, power, gas and "
		"drains need a private locator. In the zone of a mark dig by hand. Smell of gas: "
		"stop, leave, call." } },
	{ "services", 0, { .all = FACT(LINES), .words =
		"What the plan shows of lines is what somebody told: the marks on the ground go "
		"first." } },
	{ "services", 0, { .all = FACT(KEPT), .words =
		"Within what is kept nothing heavy drives, and no root thicker than a thumb is "
		"cut." } },
	{ "services", AT(FABRIC) | AT(EDGING), { .all = FACT(FABRIC) | FACT(EDGING), .words =
		"Pins and spikes find lines too." } },
	{ "services", AT(FABRIC), { .all = FACT(FABRIC), .none = FACT(EDGING), .words =
		"The pins of the fabric find lines too." } },
	{ "services", AT(EDGING), { .all = FACT(EDGING), .none = FACT(FABRIC), .words =
		"The spikes of the edging find lines too." } },
	{ "boundary", AT(SET_OUT) | AT(POSTS) | AT(WALLS), { .any = FACT(WALLS) | FACT(POSTS),
		.words = "Have its line agreed or surveyed before anything is built on it." } },
	{ "code", AT(WALLS), { .all = FACT(WALLS), .words =
		"Walls that hold ground, and what frost does to them, are matters of local code: "
		"ask before building." } },
	{ "code", AT(POSTS), { .all = FACT(POSTS), .words =
		"How high a fence may be, and how deep its posts go, is a matter of local "
		"code." } },
	{ "code", AT(PANELS), { .all = FACT(GATES), .words =
		"So is a gate that is to keep children from water." } },
	{ "code", AT(FIXTURES_INSIDE) | AT(FIXTURES), { .all = FACT(FIXTURES), .words =
		"A fixture that holds water: local code; a small child drowns in very little." } },
	{ "licence", AT(SLEEVES), { .any = FACT(PATHS) | FACT(WALLS) | FACT(LAID) | FACT(HEADER),
		.words = "Wiring, plumbing and backflow are licensed practice." } },
	{ "licence", AT(WATER), { .all = FACT(WATER), .words =
		"A backflow preventer, of the kind local code asks for, keeps garden water out of "
		"drinking water: who may fit and test it is a matter of local code too." } },
	{ "pits", AT(DIG), { .any = FACT(ZONES) | FACT(HOLES) | FACT(LAID) | FACT(HEADER),
		.words =
		"Cover or rail off what stands open." } },
	{ "pits", AT(DIG), { .all = FACT(DEEP), .words =
		"Nobody in a trench more than 4 ft deep that is not shored.", .metric =
		"Nobody in a trench more than 1.2 m deep that is not shored." } },
	{ "auger", AT(DIG), { .all = FACT(HOLES), .words =
		"It takes two people, hearing protection and firm boots; never near marks." } },
	{ "dust", AT(BASE) | AT(SURFACE), { .any = STONE, .words =
		"Dry stone gives off silica dust: wet it, wear a respirator." } },
	{ "dust", AT(WALLS), { .all = FACT(CUTS), .words =
		"Sawn block gives off silica dust: saw wet or with extraction, in a respirator "
		"(U.S. Occupational Safety and Health Administration, 29 CFR 1926.1153, Table 1, "
		"or your local rule)." } },
	{ "dust", AT(POSTS), { .all = FACT(CONCRETE), .words =
		"Dry concrete dusts: stand upwind, wear a respirator." } },
	{ "saw", AT(WALLS), { .all = FACT(CUTS), .words =
		"Protect eyes and ears, mind kickback, keep people off, no slurry in drains." } },
	{ "compactor", AT(TAMP) | AT(BASE) | AT(SURFACE), { .all = FACT(PLATE), .any = STONE,
		.words = "Mind feet and hearing; two people carry it; never near marks, close to a "
		"house or over a drain." } },
	{ "compactor", 0, { .all = FACT(PLATE) | FACT(WALLS) | FACT(PATHS), .words =
		"A plate stays 12 in from a fresh wall.", .metric =
		"A plate stays 300 mm from a fresh wall." } },
	{ "concrete", AT(POSTS), { .all = FACT(CONCRETE), .words =
		"Wet, it burns skin and eyes: gloves and goggles; wash it off at once." } },
	{ "adhesive", AT(WALLS), { .all = FACT(ADHESIVE), .words =
		"Fresh air, and what its label says." } },
	{ "timber", AT(POSTS) | AT(PANELS), { .any = FENCE, .words =
		"Treated: a mask when it is sawn, never burnt." } },
	{ "timber", 0, { .all = FACT(BEDS), .any = FENCE, .words =
		"No sawdust in the beds." } },
	{ lifting, LIFTING_STEPS, { .words =
		"Over 50 lb: two people or a trolley.", .metric =
		"Over 23 kg: two people or a trolley." } },
	{ "tipping", AT(FIXTURES_INSIDE) | AT(FIXTURES), { .all = FACT(FIXTURES), .words =
		"Fixtures are fixed against tipping: children climb." } },
	{ "payload", AT(HAUL), { .all = FACT(SPOIL), .words =
		"Never exceed a vehicle's: wet soil is heavy. A skip may need a permit." } },
	{ "soil", AT(BACKFILL) | AT(FILL) | AT(PLANTS) | AT(MULCH),
		{ .any = FILLED | FACT(MULCH) | FACT(PLANTS), .words =
		"Wear gloves." } },
	{ "soil", 0, { .all = FACT(BEDS), .words =
		"By old houses test it for lead before growing food in it." } },
};
enum { CAUTIONS = sizeof cautions / sizeof *cautions };

/* ---- Lifting --------------------------------------------------------------------------------- */

static bool is_heavy(const struct report *report, int item)
{
	return item_is_heavy(report, &report->takeoff->items.list[item]);
}

static bool has_heavy(const struct report *report)
{
	for (size_t i = 0; i < report->takeoff->items.count; i++)
		if (is_heavy(report, (int)i))
			return true;
	return false;
}

/* "Concrete, bags 80.0 lb; Wall block 60.0 lb". */
static const char *heavy_words(const struct report *report)
{
	const struct item_list *items = &report->takeoff->items;
	struct text words = TEXT_EMPTY;

	for (size_t i = 0; i < items->count; i++)
		if (is_heavy(report, (int)i))
			text_print(&words, "%s%s %s", words.length ? "; " : "",
				item_sized_label(report, &items->list[i]),
				word_weight(report, item_lifted(&items->list[i])));
	return say_text(report, &words);
}

/* Whether something heavy is lifted at all. */
static bool lifts(const struct report *report)
{
	return (report->takeoff->work.facts & FACT(FIXTURES)) || has_heavy(report);
}

static bool step_lifts(const struct report *report, const struct planned_step *step)
{
	for (int i = 0; i < step->item_count; i++)
		if (is_heavy(report, step->items[i]))
			return true;
	return (LIFTING_STEPS >> step->step) & 1u;
}

/* ---- Cautions -------------------------------------------------------------------------------- */

static bool applies(const struct report *report, const struct caution *caution)
{
	if (caution->word == lifting)
		return lifts(report);
	return phrase_holds(report, &caution->says);
}

const char *caution_next(const struct report *report, int *at, const char **sentences)
{
	struct text words = TEXT_EMPTY;
	const char *word;

	while (*at < CAUTIONS && !applies(report, &cautions[*at]))
		(*at)++;
	if (*at == CAUTIONS)
		return NULL;
	word = cautions[*at].word;
	for (; *at < CAUTIONS && strcmp(cautions[*at].word, word) == 0; (*at)++)
		if (applies(report, &cautions[*at]))
			text_add_sentence(&words, "%s", phrase_words(report, &cautions[*at].says));
	if (word == lifting && has_heavy(report))
		text_add_sentence(&words, "Here: %s.", heavy_words(report));
	*sentences = say_text(report, &words);
	return word;
}

static bool is_at(const struct report *report, const struct caution *caution,
	const struct planned_step *step)
{
	return applies(report, caution) && (caution->word == lifting ? step_lifts(report, step) :
		(caution->steps >> step->step) & 1u);
}

static bool is_at_any(const struct report *report, const struct caution *caution, unsigned steps)
{
	const struct work *work = &report->takeoff->work;

	for (int i = 0; i < work->count; i++)
		if (((steps >> work->list[i].step) & 1u) && is_at(report, caution, &work->list[i]))
			return true;
	return false;
}

const char *caution_words(const struct report *report, unsigned steps)
{
	struct text words = TEXT_EMPTY;
	const char *last = "";

	for (int i = 0; i < CAUTIONS; i++) {
		const char *word = cautions[i].word;

		if (strcmp(word, last) == 0 || !is_at_any(report, &cautions[i], steps))
			continue;
		text_print(&words, "%s%s", words.length ? ", " : "", word);
		last = word;
	}
	return say_text(report, &words);
}

bool caution_takes_two(const struct report *report, const struct planned_step *step)
{
	static const char *const for_two[] = { "auger", "compactor", lifting };

	for (int i = 0; i < CAUTIONS; i++)
		for (size_t j = 0; j < sizeof for_two / sizeof *for_two; j++)
			if (strcmp(cautions[i].word, for_two[j]) == 0 &&
				is_at(report, &cautions[i], step))
				return true;
	return false;
}
