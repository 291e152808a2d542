/* What holds for the whole plot. */
#include "plot/attribute_rows.h"

static const char *const units_words[] = { "imperial", "metric", NULL };
static const char *const mirror_words[] = { "off", "left-right", "top-bottom", "four-way",
	"half-turn", NULL };

#define AT(name) [HEAD_##name - HEAD_TITLE]

static const struct attribute_row rows[] = {
	AT(TITLE) = { "title", "Title", { .kind = VALUE_TEXT, .least = 0, .most = 120 },
		.derived = "empty" },
	AT(UNITS) = { "units", "Units shown", CHOICE(units_words), .required = true },
	AT(CELL) = { "cell", "Side of a cell", LENGTH(INCHES(1), INCHES(120)), .required = true },
	AT(NORTH) = { "north", "Bearing of plan's top",
		{ .kind = VALUE_DECIMAL, .least = 0, .most = 360 * MILLION - 1 }, IS_NUMBER(0),
		.subject = SUBJECT_ANY },
	AT(SITE) = { "site", "Latitude",
		{ .kind = VALUE_DECIMAL, .least = -66 * MILLION, .most = 66 * MILLION,
			.is_signed = true },
		.derived = "no sun figures" },
	AT(MIRROR) = { "mirror", "Mirror", CHOICE(mirror_words), IS_NUMBER(MIRROR_OFF),
		.subject = SUBJECT_ANY },
	AT(AXIS) = { "axis", "Axis, in half cells", { .kind = VALUE_PLACE },
		.derived = "the middle" },
	AT(PRICES) = { "prices", "Price book", { .kind = VALUE_TEXT, .least = 1, .most = 255 },
		.derived = "none" },
};

const struct attribute_table head_attributes = ATTRIBUTE_TABLE(NULL, HEAD_TITLE, rows);
