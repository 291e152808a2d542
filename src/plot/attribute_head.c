/* What holds for the whole plot. */
#include "plot/attribute_rows.h"

static const char *const units_words[] = { "imperial", "metric", NULL };
static const char *const mirror_words[] = { "off", "left-right", "top-bottom", "four-way",
	"half-turn", NULL };

#define AT(name) [HEAD_##name - HEAD_TITLE]

static const struct attribute_row rows[] = {
	AT(TITLE) = { "title", "Title",
		"What the plot is called; it stands above the takeoff.",
		{ .kind = VALUE_TEXT, .least = 0, .most = 120 },
		.derived = "empty" },
	AT(UNITS) = { "units", "Units shown",
		"What all figures are shown in; lengths may be typed in either.",
		CHOICE(units_words), .required = true },
	AT(CELL) = { "cell", "Side of a cell",
		"The plan is made of squares with sides this long.",
		LENGTH(INCHES(1), INCHES(120)), .required = true },
	AT(NORTH) = { "north", "Bearing of plan's top",
		"Where the plan's top points: degrees clockwise from north. Sun goes by it.",
		{ .kind = VALUE_DECIMAL, .least = 0, .most = 360 * MILLION - 1 }, IS_NUMBER(0),
		.subject = SUBJECT_ANY },
	AT(SITE) = { "site", "Latitude",
		"Degrees north, south with a minus. Hours of sun are reckoned by it.",
		{ .kind = VALUE_DECIMAL, .least = -66 * MILLION, .most = 66 * MILLION,
			.is_signed = true },
		.derived = "no sun figures" },
	AT(MIRROR) = { "mirror", "Mirror",
		"What is laid on one side is laid on the other too.",
		CHOICE(mirror_words), IS_NUMBER(MIRROR_OFF),
		.subject = SUBJECT_ANY },
	AT(AXIS) = { "axis", "Axis, in half cells",
		"Where the mirror stands, X,Y in half cells from the top left: 24,20.",
		{ .kind = VALUE_PLACE },
		.derived = "the middle" },
	AT(PRICES) = { "prices", "Price book",
		"The file with the prices; it is looked for beside the plot.",
		{ .kind = VALUE_TEXT, .least = 1, .most = 255 },
		.derived = "none" },
	AT(NOTICE) = { "notice", "Notice",
		"Of digging: its number, from whoever marks lines in the ground before it.",
		{ .kind = VALUE_TEXT, .least = 1, .most = 60 },
		.derived = "none yet" },
	AT(NOTICE_END) = { "notice-end", "Notice end",
		"The day after which lines are to be marked anew, as the notice has it.",
		{ .kind = VALUE_TEXT, .least = 1, .most = 60 },
		.derived = "not told" },
};

const struct attribute_table head_attributes = ATTRIBUTE_TABLE(NULL, HEAD_TITLE, rows);
