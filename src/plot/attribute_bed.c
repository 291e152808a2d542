/* Beds: their walls and their soil. */
#include "plot/attribute_rows.h"

static const char *const build_words[] = { "raised", "level", NULL };
static const char *const inside_words[] = { "undug", "filled", "base", NULL };

static const char *const water_words[] = { "none", "drip", NULL };

static const struct mix usual_mix = { 2, { { "topsoil", 1000 }, { "compost", 1000 } } };

#define AT(name) [BED_##name - BED_BUILD]

/* On clay or in frost a base is half as deep again: common practice, no published source. */
#define BASE "4 in, 6 in on clay or in frost"
#define BASE_METRIC "100 mm, 150 mm on clay or in frost"
#define BASE_BRIEF "4/6 in, by ground"
#define BASE_BRIEF_METRIC "100/150 mm by ground"

static const struct attribute_row rows[] = {
	AT(BUILD) = { "build", "Built",
		"Raised: on walls of block. Level: soil at the height of the ground around.",
		CHOICE(build_words), IS_NUMBER(BUILD_RAISED),
		.subject = SUBJECT_ANY },
	AT(BLOCK) = { "block", "Block as laid",
		"Length along the wall x depth across it x height, joint included.",
		{ .kind = VALUE_SIZE, .least = INCHES(1), .most = METRES(2) },
		IS_SIZE(INCHES(16), INCHES(8), INCHES(6)),
		.metric = IS_SIZE(MM(400), MM(200), MM(150)), .subject = SUBJECT_RAISED },
	AT(JOINT) = { "joint", "Joint in that size",
		"How much of the block's size is joint, not stone; 0: laid dry.",
		LENGTH(0, INCHES(1)), IS_LENGTH(0),
		.subject = SUBJECT_RAISED },
	AT(DENSITY) = { "density", "Density of the block",
		"Weight of the block over all its volume, hollows included.",
		DENSITY,
		IS_AMOUNT(135, AMOUNT_LB_CU_FT), .metric = IS_AMOUNT(2150, AMOUNT_KG_M3),
		.subject = SUBJECT_RAISED },
	AT(COURSES) = { "courses", "Courses",
		"Rows of block, one on top of the other, those below ground too.",
		COUNT(1, 40), IS_NUMBER(3),
		.subject = SUBJECT_RAISED },
	AT(CAP) = { "cap", "Cap",
		"Block on top: length along the wall x depth across it x height, or none.",
		{ .kind = VALUE_CAP, .least = INCHES(1), .most = METRES(2) },
		IS_SIZE(0, 0, 0), .subject = SUBJECT_RAISED },
	AT(EMBED) = { "embed", "Embed below ground",
		"How much of the wall is below ground: a tenth, or more by path and turf.",
		DEPTH,
		.derived = "by height, paths and turf", .brief = "by height and ground",
		.subject = SUBJECT_RAISED },
	AT(INSIDE) = { "inside", "Ground inside",
		"Ground within the walls: left and loosened, dug out and filled, or all base.",
		CHOICE(inside_words), IS_NUMBER(INSIDE_UNDUG),
		.subject = SUBJECT_RAISED },
	AT(BASE) = { "base", "Base under the wall",
		"Crushed stone under the wall, half as deep again on clay or in frost.",
		DEPTH, .derived = BASE,
		.derived_metric = BASE_METRIC, .brief = BASE_BRIEF,
		.brief_metric = BASE_BRIEF_METRIC, .subject = SUBJECT_RAISED },
	AT(REACH) = { "reach", "Base past the wall",
		"How far the base goes past the outer face of the wall.",
		LENGTH(0, METRES(1)), IS_LENGTH(INCHES(6)),
		.metric = IS_LENGTH(MM(150)), .subject = SUBJECT_RAISED },
	AT(REACH_IN) = { "reach-in", "Base inside the wall",
		"How far the base goes past the inner face of the wall.",
		LENGTH(0, METRES(1)),
		IS_LENGTH(INCHES(2)), .metric = IS_LENGTH(MM(50)), .subject = SUBJECT_RAISED },
	AT(LINER) = { "liner", "Liner inside",
		"Filter fabric along the inside of the wall: it lets water out, not soil.",
		CHOICE(yes_words), IS_NUMBER(CHOICE_YES),
		.subject = SUBJECT_RAISED },
	AT(FREEBOARD) = { "freeboard", "Left free at the top",
		"From the wall's top down to the mulch.",
		DEPTH, IS_LENGTH(INCHES(3) / 2),
		.metric = IS_LENGTH(MM(40)), .subject = SUBJECT_RAISED },
	AT(MULCH) = { "mulch", "Mulch",
		"How deep the mulch lies on the soil; 0: none.",
		DEPTH, IS_LENGTH(INCHES(2)), .metric = IS_LENGTH(MM(50)) },
	AT(MIX) = { "mix", "Mix of the fill",
		"What the bed is filled with, each with its parts: topsoil 1, compost 1.",
		{ .kind = VALUE_MIX },
		{ .set = true, .as.mix = &usual_mix }, .subject = SUBJECT_ANY },
	AT(PREPARE) = { "prepare", "Dug over",
		"Of a bed at ground level: how deep it is dug over.",
		DEPTH, IS_LENGTH(INCHES(8)),
		.metric = IS_LENGTH(MM(200)), .subject = SUBJECT_LEVEL },
	AT(AMEND) = { "amend", "Amendment dug in",
		"Of a bed at ground level: depth of compost and the like that is dug in.",
		DEPTH, IS_LENGTH(INCHES(2)),
		.metric = IS_LENGTH(MM(50)), .subject = SUBJECT_LEVEL },
	AT(REPLACE) = { "replace", "Soil replaced",
		"Of a bed at ground level: its soil is dug out and the mix put in.",
		CHOICE(yes_words), IS_NUMBER(CHOICE_NO),
		.subject = SUBJECT_LEVEL },
	AT(WATER) = { "water", "Watered",
		"By drip lines on the soil, under the mulch; none: by hand.",
		CHOICE(water_words), IS_NUMBER(WATER_NONE), .subject = SUBJECT_WATER },
	AT(DRIP_ROW) = { "drip-row", "Drip lines apart",
		"How far one drip line may lie from the next.",
		LENGTH(INCHES(1), METRES(3)), IS_LENGTH(INCHES(12)),
		.metric = IS_LENGTH(MM(300)), .subject = SUBJECT_WATER },
	AT(DRIP_EMITTER) = { "drip-emitter", "Emitters apart",
		"How far one emitter may be from the next along a drip line.",
		LENGTH(INCHES(1), METRES(3)), IS_LENGTH(INCHES(12)),
		.metric = IS_LENGTH(MM(300)), .subject = SUBJECT_WATER },
};

const struct attribute_table bed_attributes = ATTRIBUTE_TABLE("bed", BED_BUILD, rows);
