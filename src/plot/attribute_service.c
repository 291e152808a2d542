/* Services: what is in the ground. */
#include "plot/attribute_rows.h"

static const char *const owner_words[] = { "public", "private", NULL };

#define AT(name) [SERVICE_##name - SERVICE_DEPTH]

static const struct attribute_row rows[] = {
	AT(DEPTH) = { "depth", "Depth",
		"From the ground down to the top of the pipe or cable.",
		LENGTH(0, METRES(10)),
		.derived = "not known", .subject = SUBJECT_NONE },
	AT(OWNER) = { "owner", "Owner",
		"Public: a network marks it when asked. Private: only a private locator does.",
		CHOICE(owner_words),
		.derived = "not told", .subject = SUBJECT_NONE },
};

const struct attribute_table service_attributes = ATTRIBUTE_TABLE("service", SERVICE_DEPTH, rows);
