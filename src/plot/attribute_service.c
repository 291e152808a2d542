/* Services: what is in the ground. */
#include "plot/attribute_rows.h"

static const char *const owner_words[] = { "public", "private", NULL };

#define AT(name) [SERVICE_##name - SERVICE_DEPTH]

static const struct attribute_row rows[] = {
	AT(DEPTH) = { "depth", "Depth",
		"From the ground down to the top of the pipe or cable.",
		LENGTH(0, METRES(10)),
		.derived = "not known; to lay: by its kind", .brief = "not known",
		.subject = SUBJECT_SERVICE },
	AT(OWNER) = { "owner", "Owner",
		"Public: a network marks it when asked. Private: only a private locator does.",
		CHOICE(owner_words),
		.derived = "not told", .subject = SUBJECT_NONE },
	AT(TRENCH) = { "trench", "Trench, width",
		"Of a line to lay.",
		LENGTH(INCHES(1), METRES(2)),
		.derived = "6 in, of a drain 12 in", .derived_metric = "150 mm, of a drain 300 mm",
		.brief = "6 in, drain 12 in", .brief_metric = "150 mm, drain 300 mm",
		.subject = SUBJECT_SERVICE },
	AT(BELOW) = { "below", "Trench, below the top",
		"Of a line to lay: how far its trench goes on below its top, for it and its bed.",
		DEPTH, IS_LENGTH(INCHES(4)),
		.metric = IS_LENGTH(MM(100)), .subject = SUBJECT_SERVICE },
};

const struct attribute_table service_attributes = ATTRIBUTE_TABLE("service", SERVICE_DEPTH, rows);
