/* Paths. */
#include "plot/attribute_rows.h"

static const char *const grading_words[] = { "fines", "clean", NULL };

#define AT(name) [PATH_##name - PATH_BASE]

static const struct attribute_row rows[] = {
	AT(BASE) = { "base", "Base", DEPTH, IS_LENGTH(INCHES(4)),
		.source = "4 in under walks: trade press on paving", .metric = "100 mm" },
	AT(SURFACE) = { "surface", "Surface", DEPTH, IS_LENGTH(INCHES(3) / 2),
		.metric = "40 mm" },
	AT(STONE) = { "stone", "Stone of the surface", CHOICE(grading_words),
		IS_NUMBER(STONE_FINES), .subject = SUBJECT_ANY },
	AT(FABRIC) = { "fabric", "Fabric underneath", CHOICE(yes_words), IS_NUMBER(CHOICE_YES),
		.subject = SUBJECT_ANY },
	AT(EDGING) = { "edging", "Edging along it", CHOICE(yes_words), IS_NUMBER(CHOICE_YES),
		.subject = SUBJECT_ANY },
};

const struct attribute_table path_attributes = ATTRIBUTE_TABLE("path", PATH_BASE, rows);
