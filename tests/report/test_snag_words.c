/* What is said of snags: the word, the source of the rule and a sentence for each code and kind. */

#include "base/memory.h"
#include "support/garden.h"
#include "support/runner.h"
#include "report/words/snag_words.h"

#include <string.h>

static struct arena arena;

static void teardown(void)
{
	arena_clear(&arena);
}

/* ---- Words and sources ----------------------------------------------------------------------- */

static const struct {
	enum snag_code code;
	const char *word, *source;
} rules[] = {
	{ SNAG_WALL_JOG, "wall-jog",
		"Geometry: a side holds the depth of the wall round the corner and one piece." },
	{ SNAG_WALL_NARROW, "wall-narrow",
		"Geometry: two walls and ground between them take more than two blocks' depth." },
	{ SNAG_WALL_BOND, "wall-bond",
		"Running bond, joints a quarter of a unit apart or more: The Masonry Society, TMS "
		"402/602, Building Code Requirements and Specification for Masonry Structures, "
		"2016; International Code Council, International Residential Code (IRC), 2021; "
		"both as quoted." },
	{ SNAG_WALL_CORNER, "wall-corner",
		"Half a block or more, and its own end, at an outer corner: common practice, no "
		"published source." },
	{ SNAG_WALL_HIGH, "wall-high",
		"Above ground: common practice, no published source. From the footing's bottom: "
		"International Code Council, International Residential Code (IRC), 2021, R105.2, "
		"on permits; it exempts no wall that holds a surcharge, a load on the soil behind "
		"it; a higher wall is designed by an engineer; local rules are often stricter." },
	{ SNAG_WALL_EMBED, "wall-embed",
		"A tenth of the height below ground: common practice, no published source." },
	{ SNAG_WALL_SLENDER, "wall-slender",
		"Common practice, no published source, checked by statics: soil that bears with "
		"a third of its weight, a factor of 1.5 against tipping. No design: where ground, "
		"frost, water or children bear on a wall, ask an engineer." },
	{ SNAG_WALL_STEP, "wall-step",
		"Geometry: where ground rises by a course, a level wall's first course is under "
		"it. Common practice, no published source." },
	{ SNAG_BED_THIN, "bed-thin", "Common practice, no published source." },
	{ SNAG_CAP_NARROW, "cap-narrow",
		"Geometry: two caps and ground between them take more than two caps' depth." },
	{ SNAG_CAP_BOND, "cap-bond",
		"Running bond, joints a quarter of a unit apart or more: The Masonry Society, TMS "
		"402/602, Building Code Requirements and Specification for Masonry Structures, "
		"2016; International Code Council, International Residential Code (IRC), 2021; "
		"both as quoted. At each corner the cap goes through where the course below butts: "
		"common practice, no published source." },
	{ SNAG_FILL_NONE, "fill-none", "Arithmetic: no depth, or no part of the mix, is left." },
	{ SNAG_SOIL_THIN, "soil-thin", "Common practice, no published source." },
	{ SNAG_FLOOR_STONE, "floor-stone", "Common practice, no published source." },
	{ SNAG_LAWN_THIN, "lawn-thin", "Common practice, no published source." },
	{ SNAG_FENCE_TIGHT, "fence-tight",
		"Geometry: between two posts there is their distance less a post." },
	{ SNAG_FENCE_HOLE, "fence-hole",
		"Geometry: a square post goes into a round hole as wide as its diagonal." },
	{ SNAG_FENCE_HIGH, "fence-high",
		"International Code Council, International Residential Code (IRC), 2021, R105.2, "
		"on permits; other editions and local rules are often stricter." },
	{ SNAG_FENCE_PATH, "fence-path", "Common practice, no published source." },
	{ SNAG_GATE_NARROW, "gate-narrow",
		"Clear width of the way through it: U.S. Department of Justice, 2010 ADA Standards "
		"for Accessible Design, 403.5.1." },
	{ SNAG_GATE_BLOCKED, "gate-blocked", "Common practice, no published source." },
	{ SNAG_HOLE_WALL, "hole-wall",
		"Geometry: a hole and a wall, its base or planted soil take the same ground." },
	{ SNAG_BED_REACH, "bed-reach",
		"Beds reached from both sides: University of Missouri Extension, G6985, Raised-Bed "
		"Gardening. From one: South Dakota State University Extension, as quoted, title "
		"and year not noted." },
	{ SNAG_PATH_NARROW, "path-narrow",
		"Clear width: U.S. Department of Justice, 2010 ADA Standards for Accessible "
		"Design, 403.5.1." },
	{ SNAG_PATH_BARROW, "path-barrow", "Common practice, no published source." },
	{ SNAG_PATH_CUT_OFF, "path-cut-off", "Common practice, no published source." },
	{ SNAG_LAWN_NARROW, "lawn-narrow", "Common practice, no published source." },
	{ SNAG_FIXTURE_TALL, "fixture-tall",
		"Common practice, no published source: children climb." },
	{ SNAG_FIXTURE_NO_PATH, "fixture-no-path", "Common practice, no published source." },
	{ SNAG_PLANT_PLACE, "plant-place",
		"Plants stand in beds, lawns or open ground: common practice, no published "
		"source." },
	{ SNAG_PLANT_CLOSE, "plant-close",
		"Half of both spreads apart: common practice, no published source." },
	{ SNAG_PLANT_FRONT, "plant-front",
		"Tall behind or in the middle, short in front: common practice, no published "
		"source." },
	{ SNAG_PLANT_WALL, "plant-wall",
		"What is tall over little soil falls over in wind: common practice, no published "
		"source." },
	{ SNAG_PLANT_SOIL, "plant-soil", "What the plot says the plant needs." },
	{ SNAG_PLANT_SUN, "plant-sun",
		"What the plot says the plant needs; hours by geometry, without clouds, what casts "
		"shade solid down to the ground, trees too; classes: University of Nebraska "
		"Extension, as quoted, title and year not noted." },
	{ SNAG_PLANT_REACH, "plant-reach",
		"Beds reached from both sides: University of Missouri Extension, G6985, Raised-Bed "
		"Gardening. From one: South Dakota State University Extension, as quoted, title "
		"and year not noted." },
	{ SNAG_DRIFT_EMPTY, "drift-empty",
		"Half a spacing clear to the edges: common practice, no published source." },
	{ SNAG_DRIFT_THIN, "drift-thin",
		"Fewer than half of what the area alone says: common practice, no published "
		"source." },
	{ SNAG_PLANT_MANY, "plant-many", "Arithmetic: no more are placed one by one." },
	{ SNAG_HOUSE_NEAR, "house-near",
		"Soil against a house keeps its wall damp: common practice, no published source." },
	{ SNAG_HOUSE_COVERED, "house-covered",
		"Geometry: a house and what is laid take the same ground." },
	{ SNAG_HOUSE_FENCE, "house-fence",
		"Geometry: a house and a fence take the same ground." },
	{ SNAG_DROP_CUT_OFF, "drop-cut-off", "Common practice, no published source." },
	{ SNAG_SERVICE_NEAR, "service-near",
		"Common Ground Alliance, Best Practices, 5.19, on the tolerance zone, and the law "
		"of some states, which is stricter; both as quoted. Your state's rule goes "
		"first." },
	{ SNAG_KEEP_DUG, "keep-dug", "What the plot says is kept." },
	{ SNAG_TRENCH_HOLE, "trench-hole",
		"Geometry: a post's hole and a trench that was put back take the same ground." },
	{ SNAG_WATER_FLOW, "water-flow", "Common practice, no published source." },
	{ SNAG_WATER_LINE, "water-line",
		"Common practice, no published source: the maker's table goes first." },
	{ SNAG_WATER_CUT_OFF, "water-cut-off", "Geometry: where a header may go." },
	{ SNAG_FALL_HOUSE, "fall-house",
		"International Code Council, International Residential Code (IRC), 2021, R401.3, "
		"on drainage; local rules may differ." },
	{ SNAG_NAME_OPEN, "name-open", "The plot's own names." },
	{ SNAG_MIRROR_BROKEN, "mirror-broken", "The plot's own mirror." },
};
enum { RULES = sizeof rules / sizeof *rules };

START_TEST(a_code_has_its_word_and_the_source_of_its_rule)
{
	ck_assert_int_eq(rules[_i].code, _i);
	ck_assert_str_eq(snag_word(rules[_i].code), rules[_i].word);
	ck_assert_str_eq(snag_source(rules[_i].code), rules[_i].source);
}
END_TEST

/* ---- Sentences ------------------------------------------------------------------------------- */

#define FEET(feet, inches) ((12 * (feet) + (inches)) * NM_PER_INCH)
#define MM(mm) ((mm) * NM_PER_MM)

/* Each code and kind, with figures as they come about in each system of units. */
static const struct {
	enum snag_code code;
	unsigned int kind;
	enum units units;
	nm figures[SNAG_FIGURES];
	const char *sentence;
} sentences[] = {
	{ SNAG_WALL_JOG, 0, UNITS_IMPERIAL, { FEET(0, 10), FEET(1, 0) },
		"A side of 10 in is too short for the wall: it takes 1 ft, the block's depth and "
		"the shortest piece." },
	{ SNAG_WALL_JOG, 0, UNITS_METRIC, { MM(250), MM(300) },
		"A side of 250 mm is too short for the wall: it takes 300 mm, the block's depth "
		"and the shortest piece." },
	{ SNAG_WALL_NARROW, 0, UNITS_IMPERIAL, { FEET(0, 8) },
		"Too narrow for a wall on either side, each 8 in deep, with ground between them." },
	{ SNAG_WALL_NARROW, 0, UNITS_METRIC, { MM(200) },
		"Too narrow for a wall on either side, each 200 mm deep, with ground between "
		"them." },
	{ SNAG_WALL_BOND, 0, UNITS_IMPERIAL, { FEET(5, 3) },
		"The courses of this side, 5 ft 3 in long, do not bond: joints stand closer than a "
		"quarter block to those below." },
	{ SNAG_WALL_BOND, 0, UNITS_METRIC, { MM(1600) },
		"The courses of this side, 1.6 m long, do not bond: joints stand closer than a "
		"quarter block to those below." },
	{ SNAG_WALL_CORNER, WALL_CORNER_WALL, UNITS_IMPERIAL,
		{ FEET(5, 3), FEET(0, 6), FEET(0, 10) },
		"At an outer corner of this side, 5 ft 3 in long, a piece is only 6 in long, or "
		"shows a sawn end: 10 in or more, and the block's own end outwards, would hold "
		"better." },
	{ SNAG_WALL_CORNER, WALL_CORNER_WALL, UNITS_METRIC, { MM(1600), MM(150), MM(250) },
		"At an outer corner of this side, 1.6 m long, a piece is only 150 mm long, or "
		"shows a sawn end: 250 mm or more, and the block's own end outwards, would hold "
		"better." },
	{ SNAG_WALL_CORNER, WALL_CORNER_CAP, UNITS_IMPERIAL,
		{ FEET(5, 3), FEET(0, 6), FEET(0, 10) },
		"At an outer corner of this side, 5 ft 3 in long, a piece of the cap is only 6 in "
		"long, or shows a sawn end: 10 in or more, and the block's own end outwards, would "
		"hold better." },
	{ SNAG_WALL_CORNER, WALL_CORNER_CAP, UNITS_METRIC, { MM(1600), MM(150), MM(250) },
		"At an outer corner of this side, 1.6 m long, a piece of the cap is only 150 mm "
		"long, or shows a sawn end: 250 mm or more, and the block's own end outwards, "
		"would hold better." },
	{ SNAG_WALL_HIGH, WALL_HIGH_CARE, UNITS_IMPERIAL,
		{ FEET(2, 6), FEET(2, 0), FEET(3, 2), FEET(4, 0) },
		"The wall stands 2 ft 6 in above ground, over 2 ft: ask the block's maker or an "
		"engineer." },
	{ SNAG_WALL_HIGH, WALL_HIGH_CARE, UNITS_METRIC,
		{ MM(750), FEET(2, 0), MM(950), FEET(4, 0) },
		"The wall stands 750 mm above ground, over 610 mm: ask the block's maker or an "
		"engineer." },
	{ SNAG_WALL_HIGH, WALL_HIGH_PERMIT, UNITS_IMPERIAL,
		{ FEET(2, 0), FEET(2, 0), FEET(4, 1), FEET(4, 0) },
		"From the bottom of its base it is 4 ft 1 in, over 4 ft: ask for a permit "
		"(IRC R105.2; local code may be stricter)." },
	{ SNAG_WALL_HIGH, WALL_HIGH_PERMIT, UNITS_METRIC,
		{ MM(600), FEET(2, 0), MM(1250), FEET(4, 0) },
		"From the bottom of its base it is 1.25 m, over 1.219 m: ask for a permit "
		"(IRC R105.2; local code may be stricter)." },
	{ SNAG_WALL_HIGH, WALL_HIGH_BOTH, UNITS_IMPERIAL,
		{ FEET(4, 0), FEET(2, 0), FEET(4, 8), FEET(4, 0) },
		"The wall stands 4 ft above ground, over 2 ft: ask the block's maker or an "
		"engineer. From the bottom of its base it is 4 ft 8 in, over 4 ft: ask for a "
		"permit (IRC R105.2; local code may be stricter)." },
	{ SNAG_WALL_HIGH, WALL_HIGH_BOTH, UNITS_METRIC,
		{ MM(1200), FEET(2, 0), MM(1400), FEET(4, 0) },
		"The wall stands 1.2 m above ground, over 610 mm: ask the block's maker or an "
		"engineer. From the bottom of its base it is 1.4 m, over 1.219 m: ask for a permit "
		"(IRC R105.2; local code may be stricter)." },
	{ SNAG_WALL_EMBED, 0, UNITS_IMPERIAL, { FEET(0, 1), FEET(1, 6), FEET(1, 6) / 10 },
		"Only 1 in of the wall's 1 ft 6 in stands below ground; a tenth of it is "
		"1 13/16 in." },
	{ SNAG_WALL_EMBED, 0, UNITS_METRIC, { MM(40), MM(450), MM(45) },
		"Only 40 mm of the wall's 450 mm stands below ground; a tenth of it is 45 mm." },
	{ SNAG_WALL_SLENDER, WALL_SLENDER, UNITS_IMPERIAL,
		{ FEET(1, 9), FEET(0, 8), FEET(1, 8), FEET(6, 0) },
		"The wall stands 1 ft 9 in above ground and is 8 in deep: over 1 ft 8 in, the most "
		"that stands by its own weight." },
	{ SNAG_WALL_SLENDER, WALL_SLENDER_LONG, UNITS_METRIC,
		{ MM(450), MM(200), MM(400), MM(1800) },
		"The wall stands 450 mm above ground and is 200 mm deep: over 400 mm, the most "
		"that stands by its own weight where a side is longer than 1.8 m." },
	{ SNAG_WALL_SLENDER, WALL_SLENDER_CLAY, UNITS_IMPERIAL,
		{ FEET(1, 5), FEET(0, 8), FEET(1, 4), FEET(6, 0) },
		"The wall stands 1 ft 5 in above ground and is 8 in deep: over 1 ft 4 in, the most "
		"that stands by its own weight on clay." },
	{ SNAG_WALL_STEP, 0, UNITS_METRIC, { 210 * NM_PER_MM, 150 * NM_PER_MM },
		"The ground along this wall falls by 210 mm, a course of 150 mm or more: the wall "
		"must step." },
	{ SNAG_BED_THIN, 0, UNITS_IMPERIAL, { FEET(1, 0) },
		"Less than 1 ft of ground between the walls." },
	{ SNAG_BED_THIN, 0, UNITS_METRIC, { MM(300) },
		"Less than 300 mm of ground between the walls." },
	{ SNAG_CAP_NARROW, 0, UNITS_IMPERIAL, { FEET(1, 2) },
		"The cap, 1 ft 2 in deep, has no room along this bed: no cap is laid out." },
	{ SNAG_CAP_NARROW, 0, UNITS_METRIC, { MM(350) },
		"The cap, 350 mm deep, has no room along this bed: no cap is laid out." },
	{ SNAG_CAP_BOND, 0, UNITS_IMPERIAL, { FEET(5, 3) },
		"The cap on this side, 5 ft 3 in long, does not bond with the course below: joints "
		"stand closer than a quarter block, or a corner is not tied." },
	{ SNAG_CAP_BOND, 0, UNITS_METRIC, { MM(1600) },
		"The cap on this side, 1.6 m long, does not bond with the course below: joints "
		"stand closer than a quarter block, or a corner is not tied." },
	{ SNAG_FILL_NONE, FILL_NONE_UNDUG, UNITS_IMPERIAL,
		{ FEET(0, 6), FEET(0, 2), FEET(0, 3), FEET(0, 1) },
		"No soil fits: of the wall's 6 in the top 2 in stay free, 3 in are "
		"mulch and 1 in ground inside." },
	{ SNAG_FILL_NONE, FILL_NONE_UNDUG, UNITS_METRIC, { MM(150), MM(50), MM(75), MM(25) },
		"No soil fits: of the wall's 150 mm the top 50 mm stay free, 75 mm are "
		"mulch and 25 mm ground inside." },
	{ SNAG_FILL_NONE, FILL_NONE_RAISED, UNITS_IMPERIAL,
		{ FEET(0, 6), FEET(0, 3), FEET(0, 3), FEET(0, 1) },
		"No soil fits: of the wall's 6 in the top 3 in stay free, 3 in are mulch." },
	{ SNAG_FILL_NONE, FILL_NONE_RAISED, UNITS_METRIC, { MM(150), MM(75), MM(75), MM(25) },
		"No soil fits: of the wall's 150 mm the top 75 mm stay free, 75 mm are mulch." },
	{ SNAG_FILL_NONE, FILL_NONE_MIX, UNITS_IMPERIAL, { 0 },
		"Nothing is dug in: the mix has no part but topsoil, which is there already." },
	{ SNAG_FILL_NONE, FILL_NONE_REPLACED, UNITS_IMPERIAL, { 0 },
		"No soil is replaced: the depth dug over is 0." },
	{ SNAG_FILL_NONE, FILL_NONE_AMENDED, UNITS_METRIC, { 0 },
		"Nothing is dug in: the depth of the amendment is 0." },
	{ SNAG_SOIL_THIN, 0, UNITS_IMPERIAL, { FEET(0, 7), FEET(0, 8) },
		"Only 7 in of soil, less than 8 in: little grows in that." },
	{ SNAG_SOIL_THIN, 0, UNITS_METRIC, { MM(180), MM(200) },
		"Only 180 mm of soil, less than 200 mm: little grows in that." },
	{ SNAG_FLOOR_STONE, 0, UNITS_IMPERIAL, { 41 * MILLION + 260000, 40 * MILLION },
		"The wall's base lies under 41.3 % of the ground between the walls, more than "
		"40.0 %: roots stop there." },
	{ SNAG_LAWN_THIN, 0, UNITS_IMPERIAL, { FEET(0, 1), FEET(0, 2) },
		"Over a wall's base there is room for 1 in of soil under the grass, less than 2 "
		"in: it dries out." },
	{ SNAG_LAWN_THIN, 0, UNITS_METRIC, { MM(30), MM(50) },
		"Over a wall's base there is room for 30 mm of soil under the grass, less than 50 "
		"mm: it dries out." },
	{ SNAG_FENCE_TIGHT, 0, UNITS_IMPERIAL, { FEET(0, 4) },
		"These posts are 4 in apart, centre to centre: no room for a panel." },
	{ SNAG_FENCE_TIGHT, 0, UNITS_METRIC, { MM(100) },
		"These posts are 100 mm apart, centre to centre: no room for a panel." },
	{ SNAG_FENCE_TIGHT, 1, UNITS_IMPERIAL, { FEET(0, 4) },
		"These posts are 4 in apart, centre to centre: no room for a gate." },
	{ SNAG_FENCE_TIGHT, 1, UNITS_METRIC, { MM(100) },
		"These posts are 100 mm apart, centre to centre: no room for a gate." },
	{ SNAG_FENCE_HOLE, 0, UNITS_IMPERIAL, { FEET(0, 10), FEET(0, 8) },
		"A hole 10 in across does not take a post 8 in square." },
	{ SNAG_FENCE_HOLE, 0, UNITS_METRIC, { MM(250), MM(200) },
		"A hole 250 mm across does not take a post 200 mm square." },
	{ SNAG_FENCE_HIGH, 0, UNITS_IMPERIAL, { FEET(6, 6), FEET(6, 0) },
		"The fence is 6 ft 6 in high, over 6 ft: ask whether it takes a permit." },
	{ SNAG_FENCE_HIGH, 0, UNITS_METRIC, { MM(1950), MM(1800) },
		"The fence is 1.95 m high, over 1.8 m: ask whether it takes a permit." },
	{ SNAG_FENCE_PATH, 0, UNITS_IMPERIAL, { FEET(3, 0) },
		"The fence stands across the path for 3 ft and has no gate there." },
	{ SNAG_GATE_NARROW, 0, UNITS_METRIC, { MM(810), MM(900) },
		"The gate is 810 mm clear, under 900 mm." },
	{ SNAG_GATE_BLOCKED, 0, UNITS_METRIC, { MM(600) },
		"A bed or a fixture stands in front of the gate, nearer than 600 mm: no barrow "
		"turns there." },
	{ SNAG_HOLE_WALL, 0, UNITS_METRIC, { MM(270) },
		"A post's hole, 270 mm across, meets this bed's wall or its base." },
	{ SNAG_HOLE_WALL, 1, UNITS_IMPERIAL, { FEET(0, 10) },
		"A post's hole, 10 in across, is in this bed." },
	{ SNAG_BED_REACH, 0, UNITS_IMPERIAL, { FEET(2, 0) },
		"Ground of this bed is farther than 2 ft from every side one can stand at." },
	{ SNAG_PATH_NARROW, 0, UNITS_IMPERIAL, { FEET(3, 0) },
		"Less than 3 ft of clear width: no square that wide passes." },
	{ SNAG_PATH_BARROW, 0, UNITS_METRIC, { MM(600) },
		"Less than 600 mm of clear width: no barrow gets through." },
	{ SNAG_PATH_CUT_OFF, PATH_UNREACHED, UNITS_IMPERIAL, { 0 },
		"Nobody gets to this path from outside the plan: beds, fixtures or a fence without "
		"a gate are in the way." },
	{ SNAG_PATH_CUT_OFF, PATH_TO_NOTHING, UNITS_IMPERIAL, { 0 },
		"This path leads nowhere: it touches no gate, fixture, bed, lawn or boundary." },
	{ SNAG_PATH_CUT_OFF, PATH_TO_NO_HOUSE, UNITS_IMPERIAL, { 0 },
		"This path leads nowhere: it touches no gate, fixture, bed, lawn, house or "
		"boundary." },
	{ SNAG_LAWN_NARROW, 0, UNITS_IMPERIAL, { FEET(2, 0) },
		"Less than 2 ft of lawn: too narrow to mow." },
	{ SNAG_FIXTURE_TALL, 0, UNITS_IMPERIAL, { FEET(8, 0), FEET(2, 0), FEET(6, 0) },
		"8 ft high and 2 ft across its narrower way, over 6 ft: fix it against tipping." },
	{ SNAG_FIXTURE_NO_PATH, 0, UNITS_IMPERIAL, { 0 }, "No path touches this fixture." },
	{ SNAG_PLANT_PLACE, PLANT_ON_PATH, UNITS_IMPERIAL, { 1 },
		"Thyme stands on a path: nothing is planted there." },
	{ SNAG_PLANT_PLACE, PLANT_ON_FIXTURE, UNITS_IMPERIAL, { 0 },
		"Rose stands on a fixture: nothing is planted there." },
	{ SNAG_PLANT_PLACE, PLANT_IN_HOUSE, UNITS_IMPERIAL, { 0 }, "Rose stands in a house." },
	{ SNAG_PLANT_PLACE, PLANT_IN_WALL, UNITS_IMPERIAL, { 0 },
		"Rose stands in the bed's wall." },
	{ SNAG_PLANT_CLOSE, PLANT_CLOSE_DRIFTS, UNITS_IMPERIAL, { 0, 1, FEET(1, 0), FEET(2, 0) },
		"Rose and Thyme stand 1 ft apart; grown they take 2 ft, half of both spreads." },
	{ SNAG_PLANT_FRONT, 0, UNITS_METRIC, { 0, MM(1200), 1, MM(150) },
		"Rose, 1.2 m tall, hides Thyme, 150 mm tall, from where one walks up to it." },
	{ SNAG_PLANT_WALL, 0, UNITS_IMPERIAL, { 0, FEET(8, 0), FEET(1, 0), FEET(6, 0) },
		"Rose grows 8 ft tall over 1 ft of soil within walls, over 6 ft: it may not stand "
		"in wind." },
	{ SNAG_PLANT_SOIL, PLANT_SOIL_RAISED, UNITS_IMPERIAL, { 0, FEET(1, 6), FEET(1, 0) },
		"Rose needs 1 ft 6 in of soil; within these walls are 1 ft." },
	{ SNAG_PLANT_SOIL, PLANT_SOIL_LEVEL, UNITS_IMPERIAL, { 0, FEET(1, 6), FEET(0, 8) },
		"Rose needs 1 ft 6 in of soil; here 8 in are dug over." },
	{ SNAG_PLANT_SUN, 0, UNITS_IMPERIAL, { 0, 5 * 60 + 27, 6 * 60 },
		"Rose has 5.5 hours of sun a day here, and needs 6.0." },
	{ SNAG_PLANT_REACH, 0, UNITS_IMPERIAL, { 1, FEET(2, 0) },
		"Thyme stands farther than 2 ft from every side one can stand at." },
	{ SNAG_DRIFT_EMPTY, DRIFT_NO_BED, UNITS_IMPERIAL, { 1 },
		"This drift of Thyme is in no bed." },
	{ SNAG_DRIFT_EMPTY, DRIFT_NO_BAND, UNITS_IMPERIAL, { 1 },
		"The band of this drift of Thyme has no ground here: bands are whole cells, and in "
		"a narrow bed none is in it." },
	{ SNAG_DRIFT_EMPTY, DRIFT_NO_ROOM, UNITS_IMPERIAL, { 1 },
		"Thyme has no room in this drift, with half a spacing clear to the edges and to "
		"what stands there." },
	{ SNAG_DRIFT_THIN, 0, UNITS_METRIC, { 1, 9, 23, MM(300) },
		"9 of Thyme have room here, 300 mm apart; by area it would be 23. Parts of the "
		"ground are too narrow for a row." },
	{ SNAG_PLANT_MANY, 0, UNITS_IMPERIAL, { 5000000 },
		"There are more plants than 5,000,000: the rest have no place and are not "
		"counted." },
	{ SNAG_HOUSE_NEAR, 0, UNITS_IMPERIAL, { FEET(0, 6) },
		"This bed is nearer to a house than 6 in." },
	{ SNAG_HOUSE_NEAR, 0, UNITS_METRIC, { MM(150) },
		"This bed is nearer to a house than 150 mm." },
	{ SNAG_HOUSE_COVERED, 0, UNITS_IMPERIAL, { 0 }, "A house stands on this ground." },
	{ SNAG_HOUSE_FENCE, 0, UNITS_IMPERIAL, { FEET(3, 0) },
		"The fence goes through a house for 3 ft." },
	{ SNAG_DROP_CUT_OFF, DROP_REGION, UNITS_IMPERIAL, { 0 },
		"No barrow gets here from the drop: beds, fixtures, a house or a fence without a "
		"gate are in the way." },
	{ SNAG_DROP_CUT_OFF, DROP_WHOLLY, UNITS_IMPERIAL, { 0 },
		"No barrow gets from the drop to anything: beds, fixtures, a house or a fence "
		"without a gate are in the way." },
	{ SNAG_SERVICE_NEAR, HAND_GROUND, UNITS_IMPERIAL, { FEET(2, 0) },
		"Ground is worked here nearer than 2 ft to a line that is there: by hand, as the "
		"part services lists it." },
	{ SNAG_SERVICE_NEAR, HAND_HOLE, UNITS_METRIC, { MM(600) },
		"A post's hole comes nearer than 600 mm to a line that is there: by hand, never by "
		"auger." },
	{ SNAG_SERVICE_NEAR, HAND_TRENCH, UNITS_METRIC, { MM(600) },
		"The trench of a line to lay comes nearer than 600 mm to a line that is there: by "
		"hand, as the part services lists it." },
	{ SNAG_SERVICE_NEAR, HAND_HEADER, UNITS_IMPERIAL, { FEET(2, 0) },
		"The trench of the header to the drip lines comes nearer than 2 ft to a line that "
		"is there: by hand, as the part services lists it." },
	{ SNAG_SERVICE_NEAR, HAND_PLANT, UNITS_METRIC, { MM(600) },
		"A planting hole comes nearer than 600 mm to a line that is there: by hand, as the "
		"part services lists it, or plant elsewhere." },
	{ SNAG_KEEP_DUG, HAND_HEADER, UNITS_IMPERIAL, { 0 },
		"The trench of the header to the drip lines goes through something that is to be "
		"kept." },
	{ SNAG_KEEP_DUG, HAND_PLANT, UNITS_IMPERIAL, { 0 },
		"A planting hole is dug within something that is to be kept." },
	{ SNAG_KEEP_DUG, HAND_GROUND, UNITS_IMPERIAL, { 0 },
		"Ground is worked here within something that is to be kept." },
	{ SNAG_KEEP_DUG, HAND_HOLE, UNITS_IMPERIAL, { 0 },
		"A post's hole is dug within something that is to be kept." },
	{ SNAG_KEEP_DUG, HAND_TRENCH, UNITS_IMPERIAL, { 0 },
		"The trench of a line to lay goes through something that is to be kept." },
	{ SNAG_TRENCH_HOLE, TRENCH_OF_LINE, UNITS_IMPERIAL, { 1, 4, 1, FEET(0, 8) },
		"Post 4 of Rails: its hole goes through the trench of Lamp, a line to lay. Move "
		"the line or the post: 8 in or more from the line to the middle of the post." },
	{ SNAG_TRENCH_HOLE, TRENCH_OF_HEADER, UNITS_METRIC, { 0, 12, 2, MM(220) },
		"Post 12 of Pickets: its hole goes through the trench of the header to the drip "
		"lines. Move the post or the tap: 220 mm or more from the header to the middle of "
		"the post." },
	{ SNAG_WATER_FLOW, 0, UNITS_METRIC, { 700 * 1000, 675 * 1000 },
		"One drip line of this bed takes 700 L/h, more than 675 L/h, the most of one "
		"zone." },
	{ SNAG_WATER_LINE, WATER_LINE_LONG, UNITS_METRIC, { MM(61000), MM(60000) },
		"From where a drip line of this bed is fed it is 61 m long, more than 60 m: its "
		"far end gets less. Feed it in the middle." },
	{ SNAG_WATER_LINE, WATER_LINE_THIRSTY, UNITS_METRIC, { 800 * 1000, 760 * 1000 },
		"From where a drip line of this bed is fed it takes 800 L/h, more than 760 L/h: "
		"its far end gets less. Feed it in the middle." },
	{ SNAG_WATER_CUT_OFF, 0, UNITS_IMPERIAL, { 0 },
		"The header has no way here from the tap: beds, fixtures or a house are in the "
		"way." },
	{ SNAG_FALL_HOUSE, FALL_TOWARDS, UNITS_IMPERIAL,
		{ 1 * MILLION + 240000, 5 * MILLION, FEET(10, 0) },
		"Within 10 ft of a house finished ground falls towards it by 1.2 %: let it fall "
		"away by 5.0 % or more, else water stands at its walls." },
	{ SNAG_FALL_HOUSE, FALL_LITTLE, UNITS_METRIC, { 2 * MILLION - 1000, 2 * MILLION,
		MM(3000) },
		"Within 3 m of a house finished ground falls away from it by only 1.999 %, less "
		"than 2.0 %." },
	{ SNAG_FALL_HOUSE, FALL_LITTLE, UNITS_METRIC, { 2 * MILLION - 12000, 2 * MILLION,
		MM(3000) },
		"Within 3 m of a house finished ground falls away from it by only 1.99 %, less "
		"than 2.0 %." },
	{ SNAG_NAME_OPEN, 0, UNITS_IMPERIAL, { 0 },
		"A name stands here on open ground: it names nothing." },
	{ SNAG_MIRROR_BROKEN, 0, UNITS_IMPERIAL, { 0 },
		"This cell and its images in the mirror are not all alike." },
};
enum { SENTENCES = sizeof sentences / sizeof *sentences };

static char rose[] = "Rose", thyme[] = "Thyme", pickets[] = "Pickets", rails[] = "Rails",
	drain[] = "Drain", lamp[] = "Lamp";

static const char *sentence(enum snag_code code, unsigned int kind, enum units units,
	const nm *figures)
{
	struct plant plants[] = { { .name = rose }, { .name = thyme } };
	struct fence fences[] = { { .name = pickets }, { .name = rails } };
	struct service services[] = { { .name = drain }, { .name = lamp } };
	const struct plot plot = { .details = { .plants = { plants, 2, 2 }, .fences = fences,
		.around.services = { services, 2, 2 } } };
	const struct report report = { .words = &arena, .plot = &plot, .units = units };
	const struct snag snag = { .code = code, .region = NO_REGION, .kind = kind & UINT8_MAX,
		.figures = figures };

	return snag_sentence(&report, &snag);
}

START_TEST(a_sentence_has_the_figures_in_the_units_of_the_plot)
{
	ck_assert_str_eq(sentence(sentences[_i].code, sentences[_i].kind, sentences[_i].units,
		sentences[_i].figures), sentences[_i].sentence);
}
END_TEST

START_TEST(every_code_has_a_sentence)
{
	for (int code = SNAG_WALL_JOG; code < SNAG_CODES; code++) {
		int i = 0;

		while (i < SENTENCES && sentences[i].code != (enum snag_code)code)
			i++;
		ck_assert_msg(i < SENTENCES, "%s", snag_word((enum snag_code)code));
	}
}
END_TEST

START_TEST(two_sentences_may_be_held_at_once)
{
	static const nm one[SNAG_FIGURES] = { FEET(1, 0) }, two[SNAG_FIGURES] = { FEET(2, 0) };
	const char *first = sentence(SNAG_BED_THIN, 0, UNITS_IMPERIAL, one);

	ck_assert_str_eq(sentence(SNAG_BED_THIN, 0, UNITS_IMPERIAL, two),
		"Less than 2 ft of ground between the walls.");
	ck_assert_str_eq(first, "Less than 1 ft of ground between the walls.");
}
END_TEST

/* ---- Cures ----------------------------------------------------------------------------------- */

static struct garden garden;

static void setup_garden(void)
{
	static const char *const rows[] = { "b", NULL };

	garden_rows(&garden, rows);
	details_add_fence(&garden.plot.details, memory_string("Pickets"));
	garden_count(&garden);
}

static void teardown_garden(void)
{
	garden_fini(&garden);
	teardown();
}

static const struct {
	enum snag_code code;
	unsigned int kind;
	const char *cure;
} cures[] = {
	{ SNAG_WALL_JOG, 0, "change the plan, or Block as laid on the card b b." },
	{ SNAG_WALL_HIGH, WALL_HIGH_CARE, "Courses or Block as laid on the card b b." },
	{ SNAG_WALL_HIGH, WALL_HIGH_PERMIT,
		"Courses, Block as laid or Base under the wall on the card b b." },
	{ SNAG_WALL_EMBED, 0, "Embed below ground on the card b b." },
	{ SNAG_WALL_SLENDER, WALL_SLENDER_LONG,
		"change the plan, or Block as laid or Courses on the card b b." },
	{ SNAG_PATH_NARROW, 0, "change the plan." },
	{ SNAG_FALL_HOUSE, FALL_TOWARDS, "change the level or the fall of the finished ground." },
	{ SNAG_CAP_NARROW, 0, "change the plan, or Cap on the card b b." },
	{ SNAG_FILL_NONE, FILL_NONE_MIX, "Mix of the fill on the card b b." },
	{ SNAG_FENCE_TIGHT, 1, "change the plan." },
	{ SNAG_FENCE_HOLE, 0, "Hole across or Post, square on the card Pickets." },
	{ SNAG_HOUSE_NEAR, 0, "change the plan." },
	{ SNAG_HOUSE_COVERED, 0, "change the plan." },
	{ SNAG_HOUSE_FENCE, 0, "change the plan." },
	{ SNAG_DROP_CUT_OFF, DROP_WHOLLY, "change the plan." },
	{ SNAG_NAME_OPEN, 0, "change the plan." },
	{ SNAG_MIRROR_BROKEN, 0, "change the plan, or Mirror on the card The plot itself." },
};
enum { CURES = sizeof cures / sizeof *cures };

static const char *cure_of(int fence, int at)
{
	const struct report report = { .words = &arena, .plot = &garden.plot,
		.takeoff = &garden.takeoff };
	const struct snag snag = { .code = cures[at].code, .kind = cures[at].kind & UINT8_MAX,
		.region = 0, .fence = (int16_t)fence };

	return snag_cure_sentence(&report, &snag);
}

START_TEST(a_cure_is_a_field_of_a_card_or_on_the_plan)
{
	const char *words = cure_of(0, _i);

	ck_assert_int_eq(strncmp(words, "Cure: ", strlen("Cure: ")), 0);
	ck_assert_str_eq(words + strlen("Cure: "), cures[_i].cure);
}
END_TEST

START_TEST(a_fence_that_is_not_told_apart_is_any_fence)
{
	for (int i = 0; i < CURES; i++)
		if (cures[i].code == SNAG_FENCE_HOLE)
			ck_assert_str_eq(cure_of(NO_FENCE, i),
				"Cure: Hole across or Post, square on the card fence.");
}
END_TEST

START_TEST(every_sentence_has_a_cure_and_its_fields_are_on_one_card)
{
	const struct snag snag = { .code = sentences[_i].code,
		.kind = sentences[_i].kind & UINT8_MAX };
	const struct cure *cure = snag_cure(&snag);

	ck_assert(cure->by_drawing || cure->by_levels || cure->count > 0);
	for (int i = 1; i < cure->count; i++) {
		enum attribute first = cure->attributes[0], other = cure->attributes[i];

		ck_assert_int_eq(attribute_block(other), attribute_block(first));
		ck_assert_int_eq(attribute_row(other)->card, attribute_row(first)->card);
		ck_assert_int_ne(other, first);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("snag words");
	TCase *words = suite_case(suite, "words");
	TCase *said = suite_case(suite, "sentences"), *cured = suite_case(suite, "cures");

	tcase_add_loop_test(words, a_code_has_its_word_and_the_source_of_its_rule, 0, RULES);

	tcase_add_checked_fixture(said, NULL, teardown);
	tcase_add_loop_test(said, a_sentence_has_the_figures_in_the_units_of_the_plot, 0,
		SENTENCES);
	tcase_add_test(said, every_code_has_a_sentence);
	tcase_add_test(said, two_sentences_may_be_held_at_once);
	tcase_add_checked_fixture(cured, setup_garden, teardown_garden);
	tcase_add_loop_test(cured, a_cure_is_a_field_of_a_card_or_on_the_plan, 0, CURES);
	tcase_add_test(cured, a_fence_that_is_not_told_apart_is_any_fence);
	tcase_add_loop_test(cured, every_sentence_has_a_cure_and_its_fields_are_on_one_card, 0,
		SENTENCES);
	return suite;
}
