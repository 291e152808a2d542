/* Lawns. */
#include "plot/attribute_rows.h"

static const char *const cover_words[] = { "turf", "seed", "none", NULL };

#define AT(name) [LAWN_##name - LAWN_COVER]

static const struct attribute_row rows[] = {
	AT(COVER) = { "cover", "Cover", CHOICE(cover_words), IS_NUMBER(COVER_TURF),
		.subject = SUBJECT_ANY },
	AT(TOPSOIL) = { "topsoil", "Topsoil", DEPTH, IS_LENGTH(INCHES(4)),
		.metric = IS_LENGTH(MM(100)) },
	AT(THICKNESS) = { "thickness", "Thickness of turf", DEPTH, IS_LENGTH(INCHES(3) / 4),
		.metric = IS_LENGTH(MM(20)) },
};

const struct attribute_table lawn_attributes = ATTRIBUTE_TABLE("lawn", LAWN_COVER, rows);
