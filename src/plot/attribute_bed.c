/* Beds: their walls and their soil. */
#include "plot/attribute_rows.h"

static const char *const build_words[] = { "raised", "level", NULL };
static const char *const inside_words[] = { "undug", "filled", "base", NULL };

static const struct mix usual_mix = { 2, { { "topsoil", 1000 }, { "compost", 1000 } } };

#define AT(name) [BED_##name - BED_BUILD]

static const struct attribute_row rows[] = {
	AT(BUILD) = { "build", "Built", CHOICE(build_words), IS_NUMBER(BUILD_RAISED),
		.subject = SUBJECT_ANY },
	AT(BLOCK) = { "block", "Block as laid",
		{ .kind = VALUE_SIZE, .least = INCHES(1), .most = METRES(2) },
		{ .set = true, .as.size = { INCHES(16), INCHES(8), INCHES(6) } },
		.metric = "400 mm x 200 mm x 150 mm", .subject = SUBJECT_RAISED },
	AT(DENSITY) = { "density", "Density of the block", DENSITY,
		IS_AMOUNT(135, AMOUNT_LB_CU_FT), .metric = "2150 kg/m3",
		.subject = SUBJECT_RAISED },
	AT(COURSES) = { "courses", "Courses", COUNT(1, 40), IS_NUMBER(3),
		.subject = SUBJECT_RAISED },
	AT(CAP) = { "cap", "Cap", { .kind = VALUE_CAP, .least = INCHES(1), .most = METRES(2) },
		{ .set = true, .as.size = { 0, 0, 0 } }, .subject = SUBJECT_RAISED },
	AT(EMBED) = { "embed", "Embed below ground", DEPTH,
		.derived = "the paths' surface, else 1 1/2 in", .metric = "40 mm",
		.subject = SUBJECT_RAISED },
	AT(INSIDE) = { "inside", "Ground inside", CHOICE(inside_words), IS_NUMBER(INSIDE_UNDUG),
		.subject = SUBJECT_RAISED },
	AT(BASE) = { "base", "Base under the wall", DEPTH, IS_LENGTH(INCHES(4)),
		.source = "4 in under walks: trade press on paving", .metric = "100 mm",
		.subject = SUBJECT_RAISED },
	AT(REACH) = { "reach", "Base past the wall", LENGTH(0, METRES(1)), IS_LENGTH(INCHES(6)),
		.metric = "150 mm", .subject = SUBJECT_RAISED },
	AT(LINER) = { "liner", "Liner inside", CHOICE(yes_words), IS_NUMBER(CHOICE_YES),
		.subject = SUBJECT_RAISED },
	AT(FREEBOARD) = { "freeboard", "Freeboard", DEPTH, IS_LENGTH(INCHES(3) / 2),
		.metric = "40 mm", .subject = SUBJECT_RAISED },
	AT(MULCH) = { "mulch", "Mulch", DEPTH, IS_LENGTH(INCHES(2)),
		.source = "2 to 3 in over roots: extension advice", .metric = "50 mm" },
	AT(MIX) = { "mix", "Mix of the fill", { .kind = VALUE_MIX },
		{ .set = true, .as.mix = &usual_mix },
		.source = "equal topsoil and organic matter: K-State Research and Extension" },
	AT(PREPARE) = { "prepare", "Dug over", DEPTH, IS_LENGTH(INCHES(8)), .metric = "200 mm",
		.subject = SUBJECT_LEVEL },
	AT(AMEND) = { "amend", "Amendment dug in", DEPTH, IS_LENGTH(INCHES(2)), .metric = "50 mm",
		.subject = SUBJECT_LEVEL },
	AT(REPLACE) = { "replace", "Soil replaced", CHOICE(yes_words), IS_NUMBER(CHOICE_NO),
		.subject = SUBJECT_LEVEL },
};

const struct attribute_table bed_attributes = ATTRIBUTE_TABLE("bed", BED_BUILD, rows);
