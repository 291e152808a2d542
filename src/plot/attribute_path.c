/* Paths. */
#include "plot/attribute_rows.h"

static const char *const grading_words[] = { "fines", "clean", NULL };

#define AT(name) [PATH_##name - PATH_BASE]

static const struct attribute_row rows[] = {
	AT(BASE) = { "base", "Base",
		"Tamped stone below the surface, half as deep again on clay or in frost.",
		DEPTH,
		.derived = "4 in, 6 in on clay or in frost",
		.derived_metric = "100 mm, 150 mm on clay or in frost",
		.brief = "4/6 in, by ground", .brief_metric = "100/150 mm by ground" },
	AT(SURFACE) = { "surface", "Surface",
		"Depth of the stone that one walks on.",
		DEPTH, IS_LENGTH(INCHES(2)),
		.metric = IS_LENGTH(MM(50)) },
	AT(STONE) = { "stone", "Stone of the surface",
		"Fines: with stone dust, it packs firm. Clean: without, it stays loose.",
		CHOICE(grading_words),
		IS_NUMBER(STONE_FINES), .subject = SUBJECT_ANY },
	AT(FABRIC) = { "fabric", "Fabric underneath",
		"Fabric between the ground and the base, so that they do not mix.",
		CHOICE(yes_words), IS_NUMBER(CHOICE_YES),
		.subject = SUBJECT_ANY },
	AT(EDGING) = { "edging", "Edging along it",
		"Edging along the sides where no wall, fixture or held side holds the stone.",
		CHOICE(yes_words), IS_NUMBER(CHOICE_YES),
		.subject = SUBJECT_ANY },
};

const struct attribute_table path_attributes = ATTRIBUTE_TABLE("path", PATH_BASE, rows);
