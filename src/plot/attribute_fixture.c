/* Fixtures. */
#include "plot/attribute_rows.h"

#define AT(name) [FIXTURE_##name - FIXTURE_HEIGHT]

static const struct attribute_row rows[] = {
	AT(HEIGHT) = { "height", "Height",
		"How high it stands, for whether it is safe on its width; 0: not told.",
		LENGTH(0, METRES(30)), IS_LENGTH(0),
		.subject = SUBJECT_ANY },
	AT(BASE) = { "base", "Base",
		"Crushed stone under it.",
		DEPTH, IS_LENGTH(INCHES(4)), .metric = IS_LENGTH(MM(100)) },
	AT(DIAL) = { "dial", "Sundial",
		"Whether a level sundial is on it, whose hour lines are to be reckoned.",
		CHOICE(yes_words), IS_NUMBER(CHOICE_NO),
		.subject = SUBJECT_NONE },
};

const struct attribute_table fixture_attributes = ATTRIBUTE_TABLE("fixture", FIXTURE_HEIGHT, rows);
