/* The one table of attributes: keyword, block, kind, range, default and label of everything a plot
 * may say. The reader, the writer, the forms and the check of the man page all go by these rows; a
 * new attribute is one identifier and one row. */
#ifndef PLOT_ATTRIBUTE_H
#define PLOT_ATTRIBUTE_H

#include "plot/value.h"

/* Where an attribute stands. */
enum block_kind { BLOCK_HEAD, BLOCK_ALLOW, BLOCK_BED, BLOCK_PATH, BLOCK_LAWN, BLOCK_FIXTURE };
enum { BLOCK_KINDS = BLOCK_FIXTURE + 1 };

/* In the order they are written, block by block. */
enum attribute {
	HEAD_TITLE, HEAD_UNITS, HEAD_CELL, HEAD_NORTH, HEAD_SITE, HEAD_MIRROR, HEAD_AXIS,
	ALLOW_KERF, ALLOW_FIT, ALLOW_SHORTEST, ALLOW_INSIDE, ALLOW_BREAKAGE, ALLOW_SETTLEMENT,
	ALLOW_BEADS, ALLOW_CARTRIDGE,
	BED_BUILD, BED_BLOCK, BED_DENSITY, BED_COURSES, BED_CAP, BED_EMBED, BED_INSIDE, BED_BASE,
	BED_FREEBOARD, BED_MULCH, BED_MIX, BED_PREPARE, BED_AMEND, BED_REPLACE,
	PATH_BASE, PATH_SURFACE,
	LAWN_COVER, LAWN_TOPSOIL,
	FIXTURE_HEIGHT, FIXTURE_BASE
};
enum { ATTRIBUTES = FIXTURE_BASE + 1, BLOCK_VALUES_MOST = 16 };

enum mirror_kind { MIRROR_OFF, MIRROR_LEFT_RIGHT, MIRROR_TOP_BOTTOM, MIRROR_FOUR_WAY,
	MIRROR_HALF_TURN };
enum bed_build { BUILD_RAISED, BUILD_LEVEL };
enum bed_inside { INSIDE_UNDUG, INSIDE_FILLED, INSIDE_BASE };
enum lawn_cover { COVER_TURF, COVER_SEED, COVER_NONE };
enum { REPLACE_NO, REPLACE_YES };

struct attribute_row {
	const char *keyword;
	const char *label; /* in forms and reports */
	enum block_kind block;
	struct value_rule rule;
	/* The default; unset where there is none, or it depends on the rest of the plot: `derived`
	 * then says how in a few words. */
	struct value preset;
	const char *derived;
	bool required;
};

const struct attribute_row *attribute_row(enum attribute a);
/* Where the default comes from; NULL: common practice, no published source. */
const char *attribute_source(enum attribute a);
/* The keyword of a block: "allow", "bed" ...; NULL for the head. */
const char *block_keyword(enum block_kind block);
/* First and last attribute of a block. */
enum attribute block_first(enum block_kind block);
enum attribute block_last(enum block_kind block);
/* Finds a keyword in a block; false where the block has none such. */
bool attribute_find(enum block_kind block, const char *word, size_t length, enum attribute *found);

/* Notes: texts that are kept, in order. */
struct notes {
	char **texts;
	size_t count, capacity;
};

/* The attributes and notes of one block of the plot, whatever its kind. */
struct block {
	enum block_kind kind;
	struct notes notes;
	struct value values[BLOCK_VALUES_MOST]; /* by attribute less block_first */
};

void block_fini(struct block *block);
struct block block_copy(const struct block *block);
bool block_equal(const struct block *a, const struct block *b);
/* True where nothing is set and nothing noted. */
bool block_is_empty(const struct block *block);
/* Takes over text. */
void block_add_note(struct block *block, char *text);

/* The value as the plot has it, set or not. The attribute must be one of the block's kind. */
const struct value *block_value(const struct block *block, enum attribute a);
/* Sets (or, by an unset value, unsets) an attribute; takes over what value owns. */
void block_set(struct block *block, enum attribute a, struct value value);
/* The value that holds: the plot's, else the default. Not for attributes with derived defaults. */
const struct value *block_effective(const struct block *block, enum attribute a);
nm block_length(const struct block *block, enum attribute a);
int64_t block_number(const struct block *block, enum attribute a);

#endif
