/* Lawns. */
#include "plot/attribute_rows.h"

static const char *const cover_words[] = { "turf", "seed", "none", NULL };

#define AT(name) [LAWN_##name - LAWN_COVER]

static const struct attribute_row rows[] = {
	AT(COVER) = { "cover", "Cover",
		"How the grass comes: in turf, from seed, or not at all.",
		CHOICE(cover_words), IS_NUMBER(COVER_TURF),
		.subject = SUBJECT_ANY },
	AT(TOPSOIL) = { "topsoil", "Topsoil",
		"How deep the soil is under the grass.",
		DEPTH, IS_LENGTH(INCHES(4)),
		.metric = IS_LENGTH(MM(100)) },
	AT(THICKNESS) = { "thickness", "Thickness of turf",
		"How thick the turf is as it is bought, roots and all.",
		DEPTH, IS_LENGTH(INCHES(3) / 4),
		.metric = IS_LENGTH(MM(20)) },
};

const struct attribute_table lawn_attributes = ATTRIBUTE_TABLE("lawn", LAWN_COVER, rows);
