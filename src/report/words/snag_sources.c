#include "report/words/snag_words.h"

#include <ctype.h>
#include <string.h>

#define QUARTER_BOND "Running bond, joints a quarter of a unit apart or more: " \
	RUNNING_BOND_SOURCE

/* Sources without figures: those would be of one system of units, and the sentence has its own. */
static const struct {
	const char *word, *source;
} rules[] = {
	[SNAG_WALL_JOG] = { "wall-jog",
		"Geometry: a side holds the depth of the wall round the corner and one piece." },
	[SNAG_WALL_NARROW] = { "wall-narrow",
		"Geometry: two walls and ground between them take more than two blocks' depth." },
	[SNAG_WALL_BOND] = { "wall-bond", QUARTER_BOND "." },
	[SNAG_WALL_CORNER] = { "wall-corner",
		"Half a block or more, and its own end, at an outer corner: common practice, no "
		"published source." },
	[SNAG_WALL_HIGH] = { "wall-high",
		"Above ground: common practice, no published source. From the footing's bottom: "
		"International Code Council, International Residential Code (IRC), 2021, R105.2, "
		"on permits; it exempts no wall that holds a surcharge, a load on the soil behind "
		"it; a higher wall is designed by an engineer; local rules are often stricter." },
	[SNAG_WALL_EMBED] = { "wall-embed",
		"A tenth of the height below ground: common practice, no published source." },
	[SNAG_WALL_SLENDER] = { "wall-slender",
		"Common practice, no published source, checked by statics: soil that bears with "
		"a third of its weight, a factor of 1.5 against tipping. No design: where ground, "
		"frost, water or children bear on a wall, ask an engineer." },
	[SNAG_WALL_STEP] = { "wall-step",
		"Geometry: where ground rises by a course, a level wall's first course is under "
		"it. Common practice, no published source." },
	[SNAG_BED_THIN] = { "bed-thin", "Common practice, no published source." },
	[SNAG_CAP_NARROW] = { "cap-narrow",
		"Geometry: two caps and ground between them take more than two caps' depth." },
	[SNAG_CAP_BOND] = { "cap-bond", QUARTER_BOND ". At each corner the cap goes through "
		"where the course below butts: common practice, no published source." },
	[SNAG_FILL_NONE] = { "fill-none", "Arithmetic: no depth, or no part of the mix, is left." },
	[SNAG_SOIL_THIN] = { "soil-thin", "Common practice, no published source." },
	[SNAG_FLOOR_STONE] = { "floor-stone", "Common practice, no published source." },
	[SNAG_LAWN_THIN] = { "lawn-thin", "Common practice, no published source." },
	[SNAG_FENCE_TIGHT] = { "fence-tight",
		"Geometry: between two posts there is their distance less a post." },
	[SNAG_FENCE_HOLE] = { "fence-hole",
		"Geometry: a square post goes into a round hole as wide as its diagonal." },
	[SNAG_FENCE_HIGH] = { "fence-high",
		"International Code Council, International Residential Code (IRC), 2021, R105.2, "
		"on permits; other editions and local rules are often stricter." },
	[SNAG_FENCE_PATH] = { "fence-path", "Common practice, no published source." },
	[SNAG_GATE_NARROW] = { "gate-narrow",
		"Clear width of the way through it: U.S. Department of Justice, 2010 ADA Standards "
		"for Accessible Design, 403.5.1." },
	[SNAG_GATE_BLOCKED] = { "gate-blocked", "Common practice, no published source." },
	[SNAG_HOLE_WALL] = { "hole-wall",
		"Geometry: a hole and a wall, its base or planted soil take the same ground." },
	[SNAG_BED_REACH] = { "bed-reach",
		"Beds reached from both sides: University of Missouri Extension, G6985, Raised-Bed "
		"Gardening. From one: South Dakota State University Extension, as quoted, title "
		"and year not noted." },
	[SNAG_PATH_NARROW] = { "path-narrow",
		"Clear width: U.S. Department of Justice, 2010 ADA Standards for Accessible "
		"Design, 403.5.1." },
	[SNAG_PATH_BARROW] = { "path-barrow", "Common practice, no published source." },
	[SNAG_PATH_CUT_OFF] = { "path-cut-off", "Common practice, no published source." },
	[SNAG_LAWN_NARROW] = { "lawn-narrow", "Common practice, no published source." },
	[SNAG_FIXTURE_TALL] = { "fixture-tall",
		"Common practice, no published source: children climb." },
	[SNAG_FIXTURE_NO_PATH] = { "fixture-no-path", "Common practice, no published source." },
	[SNAG_PLANT_PLACE] = { "plant-place",
		"Plants stand in beds, lawns or open ground: common practice, no published "
		"source." },
	[SNAG_PLANT_CLOSE] = { "plant-close",
		"Half of both spreads apart: common practice, no published source." },
	[SNAG_PLANT_FRONT] = { "plant-front",
		"Tall behind or in the middle, short in front: common practice, no published "
		"source." },
	[SNAG_PLANT_WALL] = { "plant-wall",
		"What is tall over little soil falls over in wind: common practice, no published "
		"source." },
	[SNAG_PLANT_SOIL] = { "plant-soil", "What the plot says the plant needs." },
	[SNAG_PLANT_SUN] = { "plant-sun",
		"What the plot says the plant needs; hours by geometry, without clouds, what casts "
		"shade solid down to the ground, trees too; classes: University of Nebraska "
		"Extension, as quoted, title and year not noted." },
	[SNAG_PLANT_REACH] = { "plant-reach",
		"Beds reached from both sides: University of Missouri Extension, G6985, Raised-Bed "
		"Gardening. From one: South Dakota State University Extension, as quoted, title "
		"and year not noted." },
	[SNAG_DRIFT_EMPTY] = { "drift-empty",
		"Half a spacing clear to the edges: common practice, no published source." },
	[SNAG_DRIFT_THIN] = { "drift-thin",
		"Fewer than half of what the area alone says: common practice, no published "
		"source." },
	[SNAG_PLANT_MANY] = { "plant-many", "Arithmetic: no more are placed one by one." },
	[SNAG_HOUSE_NEAR] = { "house-near",
		"Soil against a house keeps its wall damp: common practice, no published source." },
	[SNAG_HOUSE_COVERED] = { "house-covered",
		"Geometry: a house and what is laid take the same ground." },
	[SNAG_HOUSE_FENCE] = { "house-fence",
		"Geometry: a house and a fence take the same ground." },
	[SNAG_DROP_CUT_OFF] = { "drop-cut-off", "Common practice, no published source." },
	[SNAG_SERVICE_NEAR] = { "service-near",
		"Common Ground Alliance, Best Practices, 5.19, on the tolerance zone, and the law "
		"of some states, which is stricter; both as quoted. Your state's rule goes "
		"first." },
	[SNAG_KEEP_DUG] = { "keep-dug", "What the plot says is kept." },
	[SNAG_TRENCH_HOLE] = { "trench-hole",
		"Geometry: a post's hole and a trench that was put back take the same ground." },
	[SNAG_WATER_FLOW] = { "water-flow", "Common practice, no published source." },
	[SNAG_WATER_LINE] = { "water-line",
		"Common practice, no published source: the maker's table goes first." },
	[SNAG_WATER_CUT_OFF] = { "water-cut-off", "Geometry: where a header may go." },
	[SNAG_FALL_HOUSE] = { "fall-house",
		"International Code Council, International Residential Code (IRC), 2021, R401.3, "
		"on drainage; local rules may differ." },
	[SNAG_NAME_OPEN] = { "name-open", "The plot's own names." },
	[SNAG_MIRROR_BROKEN] = { "mirror-broken", "The plot's own mirror." },
};

const char *snag_word(enum snag_code code)
{
	return rules[code].word;
}

const char *snag_heading(const struct report *report, enum snag_code code)
{
	char *words = arena_print(report->words, "%s", snag_word(code));

	words[0] = (char)toupper((unsigned char)words[0]);
	for (char *dash = strchr(words, '-'); dash; dash = strchr(dash, '-'))
		*dash = ' ';
	return words;
}

const char *snag_source(enum snag_code code)
{
	return rules[code].source;
}
