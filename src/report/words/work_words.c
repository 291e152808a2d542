#include "report/words/work_words.h"
#include "report/words/notice_words.h"
#include "report/words/phrases.h"

#include <string.h>

enum part { TITLE, DOING, TOOLS };

/* A step's title is the first one that holds; what is done is all that hold, and so are the
 * tools. */
struct step_phrase {
	enum work_step step;
	enum part part;
	struct phrase says;
};

#define LEVEL (FACT(REPLACED) | FACT(AMENDED))
#define FENCE (FACT(POSTS) | FACT(PANELS))

static const struct step_phrase phrases[] = {
	{ WORK_SERVICES, TITLE, { .all = FACT(CORE), .any = FACT(WALLS) | FACT(POSTS),
		.words = "Services and boundary" } },
	{ WORK_SERVICES, TITLE, { .all = FACT(CORE), .words = "Services" } },
	{ WORK_SERVICES, TITLE, { .words = "Extra goods" } },
	{ WORK_SERVICES, DOING, { .all = FACT(CORE), .words =
		"Have lines in the ground marked; move the plan where one lies in the way." } },
	{ WORK_SERVICES, DOING, { .all = FACT(CORE), .any = FACT(WALLS) | FACT(POSTS), .words =
		"Have the boundary confirmed." } },
	{ WORK_SERVICES, DOING, { .all = FACT(EXTRAS), .words =
		"Have at hand what the plot lists as extra." } },
	{ WORK_SERVICES, DOING, { .all = FACT(WATER), .words =
		"Time what a bucket takes at the tap, and put that in as the supply before parts "
		"of the drip lines are bought." } },
	{ WORK_SERVICES, TOOLS, { .all = FACT(CORE), .words = "telephone, paint or flags" } },
	{ WORK_SERVICES, TOOLS, { .all = FACT(WATER), .words = "bucket, watch" } },

	{ WORK_STRIP, TITLE, { .words = "Set out roughly, strip the sod" } },
	{ WORK_STRIP, DOING, { .words =
		"Mark with string or paint what is to be dug, a little wider; take the sod off and "
		"stack it apart from soil." } },
	{ WORK_STRIP, TOOLS, { .words = "string, paint, flat spade, barrow" } },

	{ WORK_SET_OUT, TITLE, { .words = "Set out exactly" } },
	{ WORK_SET_OUT, DOING, { .words =
		"Base line first, then offsets to every corner; square by 3-4-5 and by equal "
		"diagonals; strings on boards outside the dig, so that they outlast it." } },
	{ WORK_SET_OUT, TOOLS, { .words =
		"two tapes, string, stakes, boards, line level, hammer" } },

	{ WORK_DIG, TITLE, { .all = FACT(ZONES) | FACT(HOLES),
		.words = "Dig, post holes with the rest" } },
	{ WORK_DIG, TITLE, { .all = FACT(HOLES), .words = "Dig the post holes" } },
	{ WORK_DIG, TITLE, { .words = "Dig" } },
	{ WORK_DIG, DOING, { .all = FACT(ZONES), .none = FACT(LEVELS), .words =
		"To the depths listed with the dig, each measured down from the strings." } },
	{ WORK_DIG, DOING, { .all = FACT(ZONES) | FACT(LEVELS), .words =
		"Down to the formation, as far below the finished ground as is listed with the "
		"dig, read as drops from the level string line." } },
	{ WORK_DIG, DOING, { .all = FACT(HOLES), .words =
		"Holes as listed with the fence." } },
	{ WORK_DIG, DOING, { .all = FACT(HOLES) | FACT(SOD), .words =
		"Their sod comes out with the rest." } },
	{ WORK_DIG, DOING, { .all = FACT(LINES), .words =
		"By hand near lines that are there, as listed with the services." } },
	{ WORK_DIG, DOING, { .all = FACT(KEPT), .words = "By hand within what is kept." } },
	{ WORK_DIG, DOING, { .all = FACT(TOPSOIL), .words = "Topsoil on a heap of its own." } },
	{ WORK_DIG, TOOLS, { .words = "spade, pick, barrow, level" } },
	{ WORK_DIG, TOOLS, { .all = FACT(HOLES),
		.words = "digging bar, post-hole digger or hired auger" } },

	{ WORK_POSTS, TITLE, { .words = "Set the posts" } },
	{ WORK_POSTS, DOING, { .all = FACT(GRAVEL), .words = "Gravel into the holes." } },
	{ WORK_POSTS, DOING, { .words =
		"Posts plumb and in line; what stands too high is sawn off level in the end." } },
	{ WORK_POSTS, DOING, { .all = FACT(CONCRETE), .words =
		"Concrete sloped away at the top; it cures while the rest goes on." } },
	{ WORK_POSTS, DOING, { .all = FACT(ZONES), .words =
		"Where barrows and trucks still have to pass, set them last." } },
	{ WORK_POSTS, TOOLS, { .words = "level, braces, string" } },
	{ WORK_POSTS, TOOLS, { .all = FACT(CONCRETE), .words = "mixing tub, hoe" } },

	{ WORK_SLEEVES, TITLE, { .words = "Lay sleeves and lines" } },
	{ WORK_SLEEVES, DOING, { .all = FACT(PATHS) | FACT(WALLS), .words =
		"Whatever is to run under paths or walls, water or low voltage, goes in now, in a "
		"sleeve and as deep as local code asks." } },
	{ WORK_SLEEVES, DOING, { .all = FACT(PATHS), .none = FACT(WALLS), .words =
		"Whatever is to run under paths, water or low voltage, goes in now, in a sleeve "
		"and as deep as local code asks." } },
	{ WORK_SLEEVES, DOING, { .all = FACT(WALLS), .none = FACT(PATHS), .words =
		"Whatever is to run under walls, water or low voltage, goes in now, in a sleeve "
		"and as deep as local code asks." } },
	{ WORK_SLEEVES, DOING, { .all = FACT(LAID), .words =
		"Trenches and sleeves as listed with the services; each is put back and tamped "
		"once its line has been inspected." } },
	{ WORK_SLEEVES, DOING, { .all = FACT(HEADER), .words =
		"The trench of the header of the drip lines, its tubes and sleeves as listed with "
		"the watering; tube ends are left long and shut, and the trench is put back." } },
	{ WORK_SLEEVES, DOING, { .all = FACT(WATER), .none = FACT(HEADER), .words =
		"The plot does not say where the water of drip lines comes from (tap): find out "
		"before anything is laid over its way." } },
	{ WORK_SLEEVES, DOING, { .all = FACT(HEADER) | FACT(LINES), .words =
		"By hand near lines that are there, as listed with the services." } },
	{ WORK_SLEEVES, DOING, { .all = FACT(HEADER) | FACT(KEPT), .words =
		"By hand within what is kept." } },
	{ WORK_SLEEVES, TOOLS, { .words = "pipe sleeves, narrow spade" } },

	{ WORK_SET_ASIDE, TITLE, { .all = FACT(REUSED) | FACT(BACKFILL),
		.words = "Set aside topsoil, and soil for the backfill" } },
	{ WORK_SET_ASIDE, TITLE, { .all = FACT(REUSED), .words = "Set aside topsoil" } },
	{ WORK_SET_ASIDE, TITLE, { .words = "Set soil aside for backfill" } },
	{ WORK_SET_ASIDE, DOING, { .words =
		"Within reach of where it goes back, clear of strings and of the barrows' way; "
		"covered." } },
	{ WORK_SET_ASIDE, TOOLS, { .words = "barrow, sheets" } },

	{ WORK_HAUL, TITLE, { .any = FACT(REUSED) | FACT(BACKFILL) | FACT(LOW),
		.words = "Haul the rest" } },
	{ WORK_HAUL, TITLE, { .words = "Haul the spoil" } },
	{ WORK_HAUL, DOING, { .words = "Load and take away what is not used again." } },
	{ WORK_HAUL, DOING, { .all = FACT(LOW), .words =
		"Barrow what low ground takes straight to where it goes." } },
	{ WORK_HAUL, TOOLS, { .words = "barrow, boards, truck or skip" } },

	{ WORK_TAMP, TITLE, { .all = FACT(LOW), .words = "Fill low ground, tamp it all" } },
	{ WORK_TAMP, TITLE, { .words = "Tamp the ground" } },
	{ WORK_TAMP, DOING, { .all = FACT(LOW), .words =
		"Fill low ground up to its formation in thin layers, each tamped." } },
	{ WORK_TAMP, DOING, { .words = "Rake it level and tamp it before any stone is spread." } },
	{ WORK_TAMP, TOOLS, { .all = FACT(PLATE), .words = "rake, hired plate compactor" } },
	{ WORK_TAMP, TOOLS, { .none = FACT(PLATE), .words = "rake, hand tamper" } },

	{ WORK_FABRIC, TITLE, { .words = "Lay the fabric" } },
	{ WORK_FABRIC, DOING, { .words =
		"Strips lapped as listed, pinned along edges and laps, without folds." } },
	{ WORK_FABRIC, TOOLS, { .words = "knife, hammer" } },

	{ WORK_BASE, TITLE, { .words = "Lay the base" } },
	{ WORK_BASE, DOING, { .words = "In the layers listed with the stone, each tamped." } },
	{ WORK_BASE, DOING, { .all = FACT(WALLS) | FACT(FIXTURES),
		.words = "Level under walls and fixtures." } },
	{ WORK_BASE, DOING, { .all = FACT(WALLS), .none = FACT(FIXTURES),
		.words = "Level under walls." } },
	{ WORK_BASE, DOING, { .all = FACT(FIXTURES), .none = FACT(WALLS),
		.words = "Level under fixtures." } },
	{ WORK_BASE, DOING, { .all = FACT(PATHS),
		.words = "Under paths to the fall that their surface is to have." } },
	{ WORK_BASE, TOOLS, { .words = "barrow, rake, level, straight edge" } },
	{ WORK_BASE, TOOLS, { .all = FACT(PLATE), .words = "hired plate compactor" } },
	{ WORK_BASE, TOOLS, { .none = FACT(PLATE), .words = "hand tamper" } },

	{ WORK_FIXTURES_INSIDE, TITLE, { .words = "Set the fixtures that stand in a bed" } },
	{ WORK_FIXTURES_INSIDE, DOING, { .words =
		"While they can still be reached: plumb on their base." } },
	{ WORK_FIXTURES_INSIDE, TOOLS, { .words = "level, bars, trolley" } },

	{ WORK_WALLS, TITLE, { .words = "Lay the walls" } },
	{ WORK_WALLS, DOING, { .words =
		"By the laying sheets: the first course level, block by block, then course on "
		"course." } },
	{ WORK_WALLS, DOING, { .all = FACT(CUTS), .words =
		"The cut list says what to buy and which pieces share a block: saw each to the "
		"measured gap less the cutting tolerance." } },
	{ WORK_WALLS, DOING, { .all = FACT(ADHESIVE), .words =
		"Adhesive under the blocks, none in upright joints: water leaves by these." } },
	{ WORK_WALLS, DOING, { .all = FACT(CAPS), .words = "Caps last." } },
	{ WORK_WALLS, TOOLS, { .words = "level, rubber mallet, chalk line" } },
	{ WORK_WALLS, TOOLS, { .all = FACT(ADHESIVE), .words = "cartridge gun" } },
	{ WORK_WALLS, TOOLS, { .all = FACT(CUTS), .words = "rule, square, hired block saw" } },

	{ WORK_BACKFILL, TITLE, { .all = FACT(BACKFILL) | FACT(LOOSENED),
		.words = "Backfill, loosen inside" } },
	{ WORK_BACKFILL, TITLE, { .all = FACT(BACKFILL), .words = "Backfill outside the walls" } },
	{ WORK_BACKFILL, TITLE, { .all = FACT(LOOSENED),
		.words = "Loosen the ground inside the walls" } },
	{ WORK_BACKFILL, TITLE, { .words = "Dig over the beds at ground level" } },
	{ WORK_BACKFILL, DOING, { .all = FACT(BACKFILL), .words =
		"In thin layers outside the walls, tamped by hand: nothing heavy beside a fresh "
		"wall." } },
	{ WORK_BACKFILL, DOING, { .all = FACT(LOOSENED), .words =
		"Fork over the ground inside the walls." } },
	{ WORK_BACKFILL, DOING, { .all = FACT(LOOSENED) | FACT(SOD), .words =
		"Lay the sod from there back, grass down." } },
	{ WORK_BACKFILL, DOING, { .all = FACT(PREPARED), .words =
		"Turn the soil of beds at ground level, as deep as they say, where it lies." } },
	{ WORK_BACKFILL, TOOLS, { .words = "spade, fork" } },
	{ WORK_BACKFILL, TOOLS, { .all = FACT(BACKFILL), .words = "hand tamper" } },

	{ WORK_FILL, TITLE, { .all = FACT(LINER), .words = "Line and fill the beds" } },
	{ WORK_FILL, TITLE, { .any = FACT(RAISED) | FACT(REPLACED), .words = "Fill the beds" } },
	{ WORK_FILL, TITLE, { .words = "Improve the soil of the beds" } },
	{ WORK_FILL, DOING, { .all = FACT(ADHESIVE), .words =
		"Once the adhesive has cured as its label says, 24 hours where it says none "
		"(common practice)." } },
	{ WORK_FILL, DOING, { .all = FACT(LINER), .words =
		"Line the walls with the permeable filter fabric, its lower edge turned under: it "
		"holds soil back and lets water through." } },
	{ WORK_FILL, DOING, { .all = FACT(RAISED), .words =
		"Water leaves a bed through the ground below it and the upright joints of its "
		"wall: it must run neither to a house nor to a neighbour." } },
	{ WORK_FILL, DOING, { .all = FACT(MIX), .words = "Mix the parts as listed." } },
	{ WORK_FILL, DOING, { .any = FACT(RAISED) | FACT(REPLACED), .words =
		"Fill in layers, tread lightly, water, top up after it has settled." } },
	{ WORK_FILL, DOING, { .all = FACT(AMENDED), .words =
		"Spread over beds at ground level what is to improve them, and dig it in." } },
	{ WORK_FILL, TOOLS, { .words = "barrow, boards, rake, fork" } },
	{ WORK_FILL, TOOLS, { .all = FACT(LINER), .words = "knife" } },

	{ WORK_FIXTURES, TITLE, { .all = FACT(FIXTURES_INSIDE),
		.words = "Set the other fixtures" } },
	{ WORK_FIXTURES, TITLE, { .words = "Set the fixtures" } },
	{ WORK_FIXTURES, DOING, { .words =
		"Plumb on their base, before anything is laid up to them." } },
	{ WORK_FIXTURES, TOOLS, { .words = "level, bars, trolley" } },

	{ WORK_EDGING, TITLE, { .words = "Set the edging" } },
	{ WORK_EDGING, DOING, { .words =
		"Along the strings, flush with what it is to hold, spiked as listed." } },
	{ WORK_EDGING, TOOLS, { .words = "saw, hammer, string" } },

	{ WORK_SURFACE, TITLE, { .words = "Lay the surface" } },
	{ WORK_SURFACE, DOING, { .words = "Spread it and rake it to its fall." } },
	{ WORK_SURFACE, DOING, { .all = FACT(FINES), .words = "Tamp stone with fines." } },
	{ WORK_SURFACE, TOOLS, { .words = "barrow, rake" } },
	{ WORK_SURFACE, TOOLS, { .all = FACT(FINES) | FACT(PLATE),
		.words = "hired plate compactor" } },
	{ WORK_SURFACE, TOOLS, { .all = FACT(FINES), .none = FACT(PLATE),
		.words = "hand tamper" } },

	{ WORK_PANELS, TITLE, { .all = FACT(PANELS) | FACT(GATES),
		.words = "Hang panels and gates" } },
	{ WORK_PANELS, TITLE, { .all = FACT(GATES), .words = "Hang the gates" } },
	{ WORK_PANELS, TITLE, { .words = "Hang the panels" } },
	{ WORK_PANELS, DOING, { .all = FACT(CONCRETE), .words =
		"When the concrete is as old as its bag says." } },
	{ WORK_PANELS, DOING, { .all = FACT(PANELS), .words =
		"Panels between the posts, with their gap below." } },
	{ WORK_PANELS, DOING, { .all = FACT(GATES), .words = "Gates true to their gaps." } },
	{ WORK_PANELS, TOOLS, { .words = "saw, drill, level" } },

	{ WORK_PLANTS, TITLE, { .words = "Plant, and water in" } },
	{ WORK_PLANTS, DOING, { .words =
		"Set all out in their pots as the planting shows, specimens first; water the pots; "
		"a hole two to three times as wide as the root ball and no deeper; firm the soil, "
		"and water each until it stands wet." } },
	{ WORK_PLANTS, DOING, { .all = FACT(MULCH), .words =
		"Mulch comes after, clear of the stems." } },
	{ WORK_PLANTS, DOING, { .all = FACT(LINES), .words =
		"By hand near lines that are there, as listed with the services." } },
	{ WORK_PLANTS, DOING, { .all = FACT(KEPT), .words = "By hand within what is kept." } },
	{ WORK_PLANTS, TOOLS, { .words = "spade, trowel, tape, hose" } },

	{ WORK_WATER, TITLE, { .words = "Lay the drip lines" } },
	{ WORK_WATER, DOING, { .words =
		"Lay tubes out in the sun to soften; lines as listed with the watering, staked "
		"down, their far ends open." } },
	{ WORK_WATER, DOING, { .words =
		"Flush each line until it runs clear, cap it, run each zone and look at every "
		"emitter before anything covers it." } },
	{ WORK_WATER, TOOLS, { .words = "tube cutter, punch" } },

	{ WORK_MULCH, TITLE, { .words = "Mulch the beds" } },
	{ WORK_MULCH, DOING, { .words = "As deep as listed, raked level." } },
	{ WORK_MULCH, TOOLS, { .words = "barrow, rake" } },

	{ WORK_LAWN, TITLE, { .all = FACT(TURF) | FACT(SEED), .words = "Lay and sow the lawns" } },
	{ WORK_LAWN, TITLE, { .all = FACT(TURF), .words = "Lay the lawn" } },
	{ WORK_LAWN, TITLE, { .words = "Sow the lawn" } },
	{ WORK_LAWN, DOING, { .all = FACT(LAWN_SOIL), .words =
		"Rake the topsoil level and firm it." } },
	{ WORK_LAWN, DOING, { .all = FACT(TURF), .words =
		"Turf the day it comes, from boards, joints staggered." } },
	{ WORK_LAWN, DOING, { .all = FACT(SEED), .words = "Seed raked in." } },
	{ WORK_LAWN, DOING, { .words =
		"Water; boards over it where anybody has to pass, and off it until it has "
		"rooted." } },
	{ WORK_LAWN, TOOLS, { .words = "rake, roller, boards, hose" } },
	{ WORK_LAWN, TOOLS, { .all = FACT(TURF), .words = "knife" } },

	{ WORK_CLEAR_UP, TITLE, { .words = "Clear up" } },
	{ WORK_CLEAR_UP, DOING, { .words =
		"Take strings, stakes and waste away; write down where lines lie in the "
		"ground." } },
	{ WORK_CLEAR_UP, DOING, { .all = FACT(WALLS), .words =
		"Keep a few spare blocks." } },
	{ WORK_CLEAR_UP, TOOLS, { .words = "broom, barrow" } },
};
enum { PHRASES = sizeof phrases / sizeof *phrases };

/* The phrases of a part that hold, with `between` between them; the first one alone of a title. */
static const char *part_words(const struct report *report, enum work_step step, enum part part,
	const char *between)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < PHRASES; i++) {
		const struct step_phrase *phrase = &phrases[i];

		if (phrase->step != step || phrase->part != part ||
			!phrase_holds(report, &phrase->says))
			continue;
		text_print(&words, "%s%s", words.length ? between : "",
			phrase_words(report, &phrase->says));
		if (part == TITLE)
			break;
	}
	return say_text(report, &words);
}

const char *step_title(const struct report *report, enum work_step step)
{
	return part_words(report, step, TITLE, "");
}

const char *step_doing(const struct report *report, enum work_step step)
{
	const char *words = part_words(report, step, DOING, " ");
	const char *notice = step == WORK_SERVICES ? notice_sentence(report) : "";

	return *notice ? say(report, "%s %s", words, notice) : words;
}

/* Whether a list of words with commas has the word. */
static bool is_listed(const char *list, const char *word, size_t length)
{
	for (size_t next; *list; list += next + (list[next] ? strlen(", ") : 0)) {
		next = strcspn(list, ",");
		if (next == length && strncmp(list, word, length) == 0)
			return true;
	}
	return false;
}

/* Adds those of a list that are not there yet. */
static void add_new(struct text *words, const char *list)
{
	for (size_t length; *list; list += length + (list[length] ? strlen(", ") : 0)) {
		length = strcspn(list, ",");
		if (!words->length || !is_listed(words->bytes, list, length))
			text_print(words, "%s%.*s", words->length ? ", " : "", (int)length, list);
	}
}

const char *work_tools(const struct report *report)
{
	const struct work *work = &report->takeoff->work;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < work->count; i++)
		add_new(&words, part_words(report, work->list[i].step, TOOLS, ", "));
	return say_text(report, &words);
}

const char *uncounted_words(const struct report *report)
{
	static const struct phrase uncounted[] = {
		{ .all = FACT(CORE), .words = "boards, stakes, string, paint" },
		{ .all = FACT(PLATE), .any = FACT(BASE) | FACT(PATHS),
			.words = "compactor hire" },
		{ .all = FACT(CUTS), .words = "saw hire, blades" },
		{ .any = FENCE, .words = "screws, preservative" },
		{ .all = FACT(POSTS), .words = "post caps" },
		{ .all = FACT(FIXTURES), .words = "fixtures" },
		{ .all = FACT(LAID), .words = "the pipes and cables themselves" },
		{ .all = FACT(WATER), .words = "fittings at the tap" },
		{ .all = FACT(BEDS), .none = FACT(PLANTS), .words = "plants" },
		{ .words = "tools" },
	};
	struct text words = TEXT_EMPTY;

	for (size_t i = 0; i < sizeof uncounted / sizeof *uncounted; i++)
		if (phrase_holds(report, &uncounted[i]))
			text_print(&words, "%s%s", words.length ? ", " : "",
				phrase_words(report, &uncounted[i]));
	return say_text(report, &words);
}
