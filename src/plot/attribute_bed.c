/* Beds: their walls and their soil. */
#include "plot/attribute_rows.h"

static const char *const build_words[] = { "raised", "level", NULL };
static const char *const inside_words[] = { "undug", "filled", "base", NULL };

static const struct mix usual_mix = { 2, { { "topsoil", 1000 }, { "compost", 1000 } } };

#define AT(name) [BED_##name - BED_BUILD]

/* On clay or in frost a base is half as deep again: common practice, no published source. */
#define BASE "4 in, 6 in on clay or in frost"
#define BASE_METRIC "100 mm, 150 mm on clay or in frost"

static const struct attribute_row rows[] = {
	AT(BUILD) = { "build", "Built", CHOICE(build_words), IS_NUMBER(BUILD_RAISED),
		.subject = SUBJECT_ANY },
	AT(BLOCK) = { "block", "Block as laid",
		{ .kind = VALUE_SIZE, .least = INCHES(1), .most = METRES(2) },
		IS_SIZE(INCHES(16), INCHES(8), INCHES(6)),
		.metric = IS_SIZE(MM(400), MM(200), MM(150)), .subject = SUBJECT_RAISED },
	AT(JOINT) = { "joint", "Joint in that size", LENGTH(0, INCHES(1)), IS_LENGTH(0),
		.subject = SUBJECT_RAISED },
	AT(DENSITY) = { "density", "Density of the block", DENSITY,
		IS_AMOUNT(135, AMOUNT_LB_CU_FT), .metric = IS_AMOUNT(2150, AMOUNT_KG_M3),
		.subject = SUBJECT_RAISED },
	AT(COURSES) = { "courses", "Courses", COUNT(1, 40), IS_NUMBER(3),
		.subject = SUBJECT_RAISED },
	AT(CAP) = { "cap", "Cap", { .kind = VALUE_CAP, .least = INCHES(1), .most = METRES(2) },
		IS_SIZE(0, 0, 0), .subject = SUBJECT_RAISED },
	AT(EMBED) = { "embed", "Embed below ground", DEPTH,
		.derived = "by height, paths and turf",
		.subject = SUBJECT_RAISED },
	AT(INSIDE) = { "inside", "Ground inside", CHOICE(inside_words), IS_NUMBER(INSIDE_UNDUG),
		.subject = SUBJECT_RAISED },
	AT(BASE) = { "base", "Base under the wall", DEPTH, .derived = BASE,
		.derived_metric = BASE_METRIC, .subject = SUBJECT_RAISED },
	AT(REACH) = { "reach", "Base past the wall", LENGTH(0, METRES(1)), IS_LENGTH(INCHES(6)),
		.metric = IS_LENGTH(MM(150)), .subject = SUBJECT_RAISED },
	AT(REACH_IN) = { "reach-in", "Base inside the wall", LENGTH(0, METRES(1)),
		IS_LENGTH(INCHES(2)), .metric = IS_LENGTH(MM(50)), .subject = SUBJECT_RAISED },
	AT(LINER) = { "liner", "Liner inside", CHOICE(yes_words), IS_NUMBER(CHOICE_YES),
		.subject = SUBJECT_RAISED },
	AT(FREEBOARD) = { "freeboard", "Freeboard", DEPTH, IS_LENGTH(INCHES(3) / 2),
		.metric = IS_LENGTH(MM(40)), .subject = SUBJECT_RAISED },
	AT(MULCH) = { "mulch", "Mulch", DEPTH, IS_LENGTH(INCHES(2)), .metric = IS_LENGTH(MM(50)) },
	AT(MIX) = { "mix", "Mix of the fill", { .kind = VALUE_MIX },
		{ .set = true, .as.mix = &usual_mix }, .subject = SUBJECT_ANY },
	AT(PREPARE) = { "prepare", "Dug over", DEPTH, IS_LENGTH(INCHES(8)),
		.metric = IS_LENGTH(MM(200)), .subject = SUBJECT_LEVEL },
	AT(AMEND) = { "amend", "Amendment dug in", DEPTH, IS_LENGTH(INCHES(2)),
		.metric = IS_LENGTH(MM(50)), .subject = SUBJECT_LEVEL },
	AT(REPLACE) = { "replace", "Soil replaced", CHOICE(yes_words), IS_NUMBER(CHOICE_NO),
		.subject = SUBJECT_LEVEL },
};

const struct attribute_table bed_attributes = ATTRIBUTE_TABLE("bed", BED_BUILD, rows);
