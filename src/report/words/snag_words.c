#include "report/words/snag_words.h"

#include <assert.h>
#include <string.h>

#define HIGH_CARE "The wall stands {0} above ground, over {1}: ask the block's maker or an " \
	"engineer."
#define HIGH_PERMIT "From the bottom of its base it is {2}, over {3}: ask for a permit " \
	"(IRC R105.2; local code may be stricter)."
#define SLENDER "The wall stands {0} above ground and is {1} deep: over {2}, the most that " \
	"stands by its own weight"
#define CORNER_PIECE "is only {1} long, or shows a sawn end: {2} or more, and the block's own " \
	"end outwards, would hold better."
#define NO_SOIL "No soil fits: of the wall's {0} the top {1} stay free, {2} are mulch"

#define BARROW_BLOCKED "beds, fixtures, a house or a fence without a gate are in the way."

#define TOO_CLOSE "{0@} and {1@} stand {2} apart; grown they take {3}, half of both spreads."

#define BY_DRAWING .cure = { .by_drawing = true }
#define BY(...) .cure = { { __VA_ARGS__ }, \
	sizeof((const enum attribute[]){ __VA_ARGS__ }) / sizeof(enum attribute), false, false }
#define BY_LEVELS .cure = { .by_levels = true }
#define BY_DRAWING_OR(...) .cure = { { __VA_ARGS__ }, \
	sizeof((const enum attribute[]){ __VA_ARGS__ }) / sizeof(enum attribute), true, false }

/* {0} to {3} are the snag's figures; {0%} to {3%} those that are percentages; {0#} one that is less
 * than {1}; {0@} the name of a plant, {0=} that of a fence, {0|} that of a service, {0h} hours of
 * so many minutes, {0n} a number, {0~} a flow in ml an hour. */
static const struct kind {
	enum snag_code code;
	unsigned int kind;
	const char *sentence;
	struct cure cure;
} kinds[] = {
	{ SNAG_WALL_JOG, 0, "A side of {0} is too short for the wall: it takes {1}, the block's "
		"depth and the shortest piece.",
		BY_DRAWING_OR(BED_BLOCK) },
	{ SNAG_WALL_NARROW, 0, "Too narrow for a wall on either side, each {0} deep, with ground "
		"between them.",
		BY_DRAWING_OR(BED_BLOCK) },
	{ SNAG_WALL_BOND, 0, "The courses of this side, {0} long, do not bond: joints stand closer "
		"than a quarter block to those below.",
		BY_DRAWING_OR(BED_BLOCK) },
	{ SNAG_WALL_CORNER, WALL_CORNER_WALL, "At an outer corner of this side, {0} long, a piece "
		CORNER_PIECE,
		BY_DRAWING_OR(BED_BLOCK) },
	{ SNAG_WALL_CORNER, WALL_CORNER_CAP, "At an outer corner of this side, {0} long, a piece "
		"of the cap " CORNER_PIECE,
		BY_DRAWING_OR(BED_CAP) },
	{ SNAG_WALL_HIGH, WALL_HIGH_CARE, HIGH_CARE,
		BY(BED_COURSES, BED_BLOCK) },
	{ SNAG_WALL_HIGH, WALL_HIGH_PERMIT, HIGH_PERMIT,
		BY(BED_COURSES, BED_BLOCK, BED_BASE) },
	{ SNAG_WALL_HIGH, WALL_HIGH_BOTH, HIGH_CARE " " HIGH_PERMIT,
		BY(BED_COURSES, BED_BLOCK) },
	{ SNAG_WALL_EMBED, 0, "Only {0} of the wall's {1} stands below ground; a tenth of it is "
		"{2}.",
		BY(BED_EMBED) },
	{ SNAG_WALL_SLENDER, WALL_SLENDER, SLENDER ".",
		BY(BED_BLOCK, BED_COURSES) },
	{ SNAG_WALL_SLENDER, WALL_SLENDER_LONG, SLENDER " where a side is longer than {3}.",
		BY_DRAWING_OR(BED_BLOCK, BED_COURSES) },
	{ SNAG_WALL_SLENDER, WALL_SLENDER_CLAY, SLENDER " on clay.",
		BY(BED_BLOCK, BED_COURSES) },
	{ SNAG_WALL_STEP, 0, "The ground along this wall falls by {0}, a course of {1} or more: "
		"the wall must step.",
		BY_DRAWING_OR(BED_BLOCK) },
	{ SNAG_BED_THIN, 0, "Less than {0} of ground between the walls.",
		BY_DRAWING_OR(BED_BLOCK) },
	{ SNAG_CAP_NARROW, 0, "The cap, {0} deep, has no room along this bed: no cap is laid "
		"out.",
		BY_DRAWING_OR(BED_CAP) },
	{ SNAG_CAP_BOND, 0, "The cap on this side, {0} long, does not bond with the course below: "
		"joints stand closer than a quarter block, or a corner is not tied.",
		BY_DRAWING_OR(BED_CAP) },
	{ SNAG_FILL_NONE, FILL_NONE_UNDUG, NO_SOIL " and {3} ground inside.",
		BY(BED_COURSES, BED_FREEBOARD, BED_MULCH) },
	{ SNAG_FILL_NONE, FILL_NONE_RAISED, NO_SOIL ".",
		BY(BED_COURSES, BED_FREEBOARD, BED_MULCH) },
	{ SNAG_FILL_NONE, FILL_NONE_MIX, "Nothing is dug in: the mix has no part but topsoil, "
		"which is there already.",
		BY(BED_MIX) },
	{ SNAG_FILL_NONE, FILL_NONE_REPLACED, "No soil is replaced: the depth dug over is 0.",
		BY(BED_PREPARE) },
	{ SNAG_FILL_NONE, FILL_NONE_AMENDED, "Nothing is dug in: the depth of the amendment is "
		"0.",
		BY(BED_AMEND) },
	{ SNAG_SOIL_THIN, 0, "Only {0} of soil, less than {1}: little grows in that.",
		BY(BED_COURSES, BED_FREEBOARD, BED_MULCH) },
	{ SNAG_FLOOR_STONE, 0, "The wall's base lies under {0%} of the ground between the walls, "
		"more than {1%}: roots stop there.",
		BY_DRAWING_OR(BED_REACH_IN, BED_BLOCK) },
	{ SNAG_LAWN_THIN, 0, "Over a wall's base there is room for {0} of soil under the grass, "
		"less than {1}: it dries out.",
		BY_DRAWING_OR(LAWN_COVER, LAWN_THICKNESS) },
	{ SNAG_FENCE_TIGHT, 0, "These posts are {0} apart, centre to centre: no room for a "
		"panel.", BY_DRAWING },
	{ SNAG_FENCE_TIGHT, 1, "These posts are {0} apart, centre to centre: no room for a gate.",
		BY_DRAWING },
	{ SNAG_FENCE_HOLE, 0, "A hole {0} across does not take a post {1} square.",
		BY(FENCE_HOLE, FENCE_POST) },
	{ SNAG_FENCE_HIGH, 0, "The fence is {0} high, over {1}: ask whether it takes a permit.",
		BY(FENCE_HEIGHT) },
	{ SNAG_FENCE_PATH, 0, "The fence stands across the path for {0} and has no gate there.",
		BY_DRAWING },
	{ SNAG_GATE_NARROW, 0, "The gate is {0} clear, under {1}.", BY_DRAWING },
	{ SNAG_GATE_BLOCKED, 0, "A bed or a fixture stands in front of the gate, nearer "
		"than {0}: no barrow turns there.", BY_DRAWING },
	{ SNAG_HOLE_WALL, 0, "A post's hole, {0} across, meets this bed's wall or its base.",
		BY_DRAWING_OR(BED_REACH) },
	{ SNAG_HOLE_WALL, 1, "A post's hole, {0} across, is in this bed.", BY_DRAWING },
	{ SNAG_BED_REACH, 0, "Ground of this bed is farther than {0} from every side one can "
		"stand at.", BY_DRAWING },
	{ SNAG_PATH_NARROW, 0, "Less than {0} of clear width: no square that wide passes.",
		BY_DRAWING },
	{ SNAG_PATH_BARROW, 0, "Less than {0} of clear width: no barrow gets through.",
		BY_DRAWING },
	{ SNAG_PATH_CUT_OFF, PATH_UNREACHED, "Nobody gets to this path from outside the plan: "
		"beds, fixtures or a fence without a gate are in the way.", BY_DRAWING },
	{ SNAG_PATH_CUT_OFF, PATH_TO_NOTHING, "This path leads nowhere: it touches no gate, "
		"fixture, bed, lawn or boundary.",
		BY_DRAWING },
	{ SNAG_PATH_CUT_OFF, PATH_TO_NO_HOUSE, "This path leads nowhere: it touches no gate, "
		"fixture, bed, lawn, house or boundary.",
		BY_DRAWING },
	{ SNAG_LAWN_NARROW, 0, "Less than {0} of lawn: too narrow to mow.",
		BY_DRAWING },
	{ SNAG_FIXTURE_TALL, 0, "{0} high and {1} across its narrower way, over {2}: fix it "
		"against tipping.",
		BY_DRAWING_OR(FIXTURE_HEIGHT) },
	{ SNAG_FIXTURE_NO_PATH, 0, "No path touches this fixture.",
		BY_DRAWING },
	{ SNAG_PLANT_PLACE, PLANT_ON_PATH, "{0@} stands on a path: nothing is planted there.",
		BY_DRAWING },
	{ SNAG_PLANT_PLACE, PLANT_ON_FIXTURE, "{0@} stands on a fixture: nothing is planted there.",
		BY_DRAWING },
	{ SNAG_PLANT_PLACE, PLANT_IN_HOUSE, "{0@} stands in a house.",
		BY_DRAWING },
	{ SNAG_PLANT_PLACE, PLANT_IN_WALL, "{0@} stands in the bed's wall.",
		BY_DRAWING },
	{ SNAG_PLANT_CLOSE, PLANT_CLOSE_SPECIMENS, TOO_CLOSE,
		BY_DRAWING_OR(PLANT_SPREAD) },
	{ SNAG_PLANT_CLOSE, PLANT_CLOSE_DRIFTS, TOO_CLOSE,
		BY_DRAWING_OR(PLANT_SPACING, PLANT_SPREAD) },
	{ SNAG_PLANT_FRONT, 0, "{0@}, {1} tall, hides {2@}, {3} tall, from where one walks up to "
		"it.",
		BY_DRAWING_OR(PLANT_HEIGHT) },
	{ SNAG_PLANT_WALL, 0, "{0@} grows {1} tall over {2} of soil within walls, over {3}: it may "
		"not stand in wind.",
		BY_DRAWING_OR(BED_COURSES, BED_FREEBOARD) },
	{ SNAG_PLANT_SOIL, PLANT_SOIL_RAISED, "{0@} needs {1} of soil; within these walls are {2}.",
		BY_DRAWING_OR(BED_COURSES, BED_FREEBOARD) },
	{ SNAG_PLANT_SOIL, PLANT_SOIL_LEVEL, "{0@} needs {1} of soil; here {2} are dug over.",
		BY_DRAWING_OR(BED_PREPARE) },
	{ SNAG_PLANT_SUN, 0, "{0@} has {1h} hours of sun a day here, and needs {2h}.",
		BY_DRAWING_OR(PLANT_SUN) },
	{ SNAG_PLANT_REACH, 0, "{0@} stands farther than {1} from every side one can stand at.",
		BY_DRAWING },
	{ SNAG_DRIFT_EMPTY, DRIFT_NO_BED, "This drift of {0@} is in no bed.",
		BY_DRAWING },
	{ SNAG_DRIFT_EMPTY, DRIFT_NO_BAND, "The band of this drift of {0@} has no ground here: "
		"bands are whole cells, and in a narrow bed none is in it.",
		BY_DRAWING },
	{ SNAG_DRIFT_EMPTY, DRIFT_NO_ROOM, "{0@} has no room in this drift, with half a spacing "
		"clear to the edges and to what stands there.",
		BY_DRAWING_OR(PLANT_SPACING) },
	{ SNAG_DRIFT_THIN, 0, "{1n} of {0@} have room here, {3} apart; by area it would be {2n}. "
		"Parts of the ground are too narrow for a row.",
		BY_DRAWING_OR(PLANT_SPACING, PLANT_PATTERN) },
	{ SNAG_PLANT_MANY, 0, "There are more plants than {0n}: the rest have no place and are not "
		"counted.",
		BY_DRAWING },
	{ SNAG_HOUSE_NEAR, 0, "This bed is nearer to a house than {0}.",
		BY_DRAWING },
	{ SNAG_HOUSE_COVERED, 0, "A house stands on this ground.",
		BY_DRAWING },
	{ SNAG_HOUSE_FENCE, 0, "The fence goes through a house for {0}.",
		BY_DRAWING },
	{ SNAG_DROP_CUT_OFF, DROP_REGION, "No barrow gets here from the drop: " BARROW_BLOCKED,
		BY_DRAWING },
	{ SNAG_DROP_CUT_OFF, DROP_WHOLLY, "No barrow gets from the drop to anything: "
		BARROW_BLOCKED,
		BY_DRAWING },
	{ SNAG_SERVICE_NEAR, HAND_GROUND, "Ground is worked here nearer than {0} to a line that "
		"is there: by hand, as the part services lists it.",
		BY_DRAWING },
	{ SNAG_SERVICE_NEAR, HAND_HOLE, "A post's hole comes nearer than {0} to a line that is "
		"there: by hand, never by auger.",
		BY_DRAWING },
	{ SNAG_SERVICE_NEAR, HAND_TRENCH, "The trench of a line to lay comes nearer than {0} to a "
		"line that is there: by hand, as the part services lists it.",
		BY_DRAWING },
	{ SNAG_SERVICE_NEAR, HAND_HEADER, "The trench of the header to the drip lines comes nearer "
		"than {0} to a line that is there: by hand, as the part services lists it.",
		BY_DRAWING },
	{ SNAG_SERVICE_NEAR, HAND_PLANT, "A planting hole comes nearer than {0} to a line that is "
		"there: by hand, as the part services lists it, or plant elsewhere.",
		BY_DRAWING },
	{ SNAG_KEEP_DUG, HAND_GROUND, "Ground is worked here within something that is to be kept.",
		BY_DRAWING },
	{ SNAG_KEEP_DUG, HAND_HOLE, "A post's hole is dug within something that is to be kept.",
		BY_DRAWING },
	{ SNAG_KEEP_DUG, HAND_TRENCH, "The trench of a line to lay goes through something that is "
		"to be kept.",
		BY_DRAWING },
	{ SNAG_KEEP_DUG, HAND_HEADER, "The trench of the header to the drip lines goes through "
		"something that is to be kept.",
		BY_DRAWING },
	{ SNAG_KEEP_DUG, HAND_PLANT, "A planting hole is dug within something that is to be kept.",
		BY_DRAWING },
	{ SNAG_TRENCH_HOLE, TRENCH_OF_LINE, "Post {1n} of {0=}: its hole goes through the trench "
		"of {2|}, a line to lay. Move the line or the post: {3} or more from the line to "
		"the middle of the post.",
		BY_DRAWING },
	{ SNAG_TRENCH_HOLE, TRENCH_OF_HEADER, "Post {1n} of {0=}: its hole goes through the trench "
		"of the header to the drip lines. Move the post or the tap: {3} or more from the "
		"header to the middle of the post.",
		BY_DRAWING },
	{ SNAG_WATER_FLOW, 0, "One drip line of this bed takes {0~}, more than {1~}, the most of "
		"one zone.", BY_DRAWING_OR(BED_DRIP_EMITTER) },
	{ SNAG_WATER_LINE, WATER_LINE_LONG, "From where a drip line of this bed is fed it is {0} "
		"long, more than {1}: its far end gets less. Feed it in the middle.", BY_DRAWING },
	{ SNAG_WATER_LINE, WATER_LINE_THIRSTY, "From where a drip line of this bed is fed it "
		"takes {0~}, more than {1~}: its far end gets less. Feed it in the middle.",
		BY_DRAWING_OR(BED_DRIP_EMITTER) },
	{ SNAG_WATER_CUT_OFF, 0, "The header has no way here from the tap: beds, fixtures or a "
		"house are in the way.", BY_DRAWING },
	{ SNAG_FALL_HOUSE, FALL_TOWARDS, "Within {2} of a house finished ground falls towards it "
		"by {0%}: let it fall away by {1%} or more, else water stands at its walls.",
		BY_LEVELS },
	{ SNAG_FALL_HOUSE, FALL_LITTLE, "Within {2} of a house finished ground falls away from it "
		"by only {0#}, less than {1%}.",
		BY_LEVELS },
	{ SNAG_NAME_OPEN, 0, "A name stands here on open ground: it names nothing.",
		BY_DRAWING },
	{ SNAG_MIRROR_BROKEN, 0, "This cell and its images in the mirror are not all alike.",
		BY_DRAWING_OR(HEAD_MIRROR) },
};

/* "41.3 %". */
static const char *percentage(const struct report *report, nm millionths, int places)
{
	return say(report, "%s %%", plain_decimal(report,
		(double)millionths / (double)MILLION, places));
}

/* What is less than it should be, by a thousandth of a percent or more, as on the paper of the
 * levels: "1.99 %", but never as much as it should be: "1.999 %". */
static const char *little(const struct report *report, nm millionths, nm least)
{
	const nm half = MILLION / 100 / 2;

	return percentage(report, millionths, millionths + half < least ? 2 : 3);
}

/* c: behind an opening brace. Returns the closing one. */
static const char *add_figure(struct text *words, const struct report *report, const char *c,
	const nm *figures)
{
	nm figure = figures[c[0] - '0'];

	switch (c[1]) {
	case '%':
		text_add(words, percentage(report, figure, 1));
		return c + 2;
	case '#':
		text_add(words, little(report, figure, figures[1]));
		return c + 2;
	case '@':
		text_add(words, report->plot->details.plants.items[figure].name);
		return c + 2;
	case '=':
		text_add(words, report->plot->details.fences[figure].name);
		return c + 2;
	case '|':
		text_add(words, report->plot->details.around.services.items[figure].name);
		return c + 2;
	case 'h':
		text_add(words, plain_decimal(report, (double)figure / 60, 1));
		return c + 2;
	case 'n':
		text_add(words, plain_count(report, figure));
		return c + 2;
	case '~':
		text_add(words, plain_flow(report, (double)figure / (double)MILLION));
		return c + 2;
	default:
		text_add(words, plain_length(report, figure));
		return c + 1;
	}
}

static const char *filled_in(const struct report *report, const char *sentence, const nm *figures)
{
	struct text words = TEXT_EMPTY;

	for (const char *c = sentence; *c; c++) {
		if (*c != '{') {
			text_add_bytes(&words, c, 1);
			continue;
		}
		c = add_figure(&words, report, c + 1, figures);
	}
	return say_text(report, &words);
}

static const struct kind *kind_of(const struct snag *snag)
{
	const struct kind *kind = kinds;

	while (kind->code != snag->code || kind->kind != snag->kind) {
		kind++;
		assert(kind < kinds + sizeof kinds / sizeof *kinds);
	}
	return kind;
}

const char *snag_sentence(const struct report *report, const struct snag *snag)
{
	return filled_in(report, kind_of(snag)->sentence, snag->figures);
}

/* ---- Cures ----------------------------------------------------------------------------------- */

const struct cure *snag_cure(const struct snag *snag)
{
	return &kind_of(snag)->cure;
}

const char *snag_card(const struct report *report, const struct snag *snag)
{
	const struct cure *cure = snag_cure(snag);
	const struct plant *plant;
	const struct entry *entry;

	if (cure->count == 0)
		return NULL;
	switch (attribute_block(cure->attributes[0])) {
	case BLOCK_HEAD:
		return HEAD_CARD_TITLE;
	case BLOCK_ALLOW:
		return allow_card_titles[attribute_row(cure->attributes[0])->card];
	case BLOCK_FENCE:
		return snag->fence == NO_FENCE ? block_keyword(BLOCK_FENCE) :
			report->plot->details.fences[snag->fence].name;
	case BLOCK_PLANT:
		plant = &report->plot->details.plants.items[snag->figures[0]];
		return say(report, "%c %s", plant->letter, plant->name);
	default:
		entry = report->takeoff->survey.regions[snag->region].entry;
		return say(report, "%c %s", entry->letter, entry->name);
	}
}

const char *snag_cure_sentence(const struct report *report, const struct snag *snag)
{
	const struct cure *cure = snag_cure(snag);
	struct text words = TEXT_EMPTY;

	text_print(&words, "Cure: %s", cure->by_levels ? "change the level or the fall of the "
		"finished ground" : !cure->by_drawing ? "" :
		cure->count == 0 ? "change the plan" : "change the plan, or ");
	for (int i = 0; i < cure->count; i++)
		text_print(&words, "%s%s", i == 0 ? "" : i == cure->count - 1 ? " or " : ", ",
			attribute_row(cure->attributes[i])->label);
	if (cure->count)
		text_print(&words, " on the card %s", snag_card(report, snag));
	text_add(&words, ".");
	return say_text(report, &words);
}
