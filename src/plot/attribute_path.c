/* Paths. */
#include "plot/attribute_rows.h"

static const char *const grading_words[] = { "fines", "clean", NULL };

#define AT(name) [PATH_##name - PATH_BASE]

static const struct attribute_row rows[] = {
	AT(BASE) = { "base", "Base", DEPTH,
		.derived = "4 in, 6 in on clay or in frost",
		.derived_metric = "100 mm, 150 mm on clay or in frost" },
	AT(SURFACE) = { "surface", "Surface", DEPTH, IS_LENGTH(INCHES(2)),
		.metric = IS_LENGTH(MM(50)) },
	AT(STONE) = { "stone", "Stone of the surface", CHOICE(grading_words),
		IS_NUMBER(STONE_FINES), .subject = SUBJECT_ANY },
	AT(FABRIC) = { "fabric", "Fabric underneath", CHOICE(yes_words), IS_NUMBER(CHOICE_YES),
		.subject = SUBJECT_ANY },
	AT(EDGING) = { "edging", "Edging along it", CHOICE(yes_words), IS_NUMBER(CHOICE_YES),
		.subject = SUBJECT_ANY },
};

const struct attribute_table path_attributes = ATTRIBUTE_TABLE("path", PATH_BASE, rows);
