/* Attributes: everything a plot may say. One row says all of an attribute; the reader, the
 * writer, the cards, the price book, the takeoff's list of what is assumed and the check of the
 * man page go by these rows, which are in attribute_BLOCK.c. A new attribute is one identity
 * here and one row there. */
#ifndef PLOT_ATTRIBUTE_H
#define PLOT_ATTRIBUTE_H

#include "plot/value.h"

/* Where an attribute is. */
enum block_kind { BLOCK_HEAD, BLOCK_ALLOW, BLOCK_BED, BLOCK_PATH, BLOCK_LAWN, BLOCK_FIXTURE,
	BLOCK_FENCE, BLOCK_RATES, BLOCK_SERVICE, BLOCK_PLANT };
enum { BLOCK_KINDS = BLOCK_PLANT + 1 };

/* Block by block, each in the order it is written. */
enum attribute {
	HEAD_TITLE, HEAD_UNITS, HEAD_CELL, HEAD_NORTH, HEAD_SITE, HEAD_MIRROR, HEAD_AXIS,
	HEAD_PRICES, HEAD_NOTICE, HEAD_NOTICE_END,
	ALLOW_KERF, ALLOW_FIT, ALLOW_SHORTEST, ALLOW_INSIDE, ALLOW_BREAKAGE, ALLOW_SETTLEMENT,
	ALLOW_BEADS, ALLOW_CARTRIDGE, ALLOW_ADHESIVE_SPARE,
	ALLOW_TOPSOIL, ALLOW_SOD, ALLOW_SUBSOIL, ALLOW_FROST, ALLOW_HELD, ALLOW_TAMPER,
	ALLOW_SWELL_TOPSOIL, ALLOW_SWELL_LOAM, ALLOW_SWELL_CLAY, ALLOW_SWELL_SAND,
	ALLOW_SHRINK, ALLOW_SLEEVE_PAST,
	ALLOW_COMPACTION_FINES, ALLOW_COMPACTION_CLEAN, ALLOW_STONE_SPARE, ALLOW_TURF_SPARE,
	ALLOW_SEED, ALLOW_DENSITY_STONE, ALLOW_DENSITY_SOIL, ALLOW_DENSITY_COMPOST,
	ALLOW_DENSITY_MULCH, ALLOW_DENSITY_SPOIL,
	ALLOW_BARROW_VOLUME, ALLOW_BARROW_WEIGHT, ALLOW_PICKUP_WEIGHT,
	ALLOW_TRUCK_VOLUME, ALLOW_TRUCK_WEIGHT, ALLOW_TRUCK_STEP,
	ALLOW_FABRIC_WIDTH, ALLOW_FABRIC_LENGTH, ALLOW_FABRIC_LAP, ALLOW_FABRIC_END_LAP,
	ALLOW_FABRIC_OFFCUT, ALLOW_FABRIC_PINS, ALLOW_LINER_TURN, ALLOW_LINER_WIDTH,
	ALLOW_LINER_LENGTH, ALLOW_LINER_LAP, ALLOW_EDGING_PIECE, ALLOW_EDGING_SPIKE,
	ALLOW_CONCRETE_BAG, ALLOW_POST_STOCK,
	ALLOW_PLANT_SPARE, ALLOW_PLANT_TALL,
	ALLOW_EMITTER_RATE, ALLOW_SUPPLY, ALLOW_SUPPLY_USED, ALLOW_LINE_LIMIT, ALLOW_LINE_FLOW,
	ALLOW_WATER_RUNS, ALLOW_WATER_WEEK,
	ALLOW_WATER_JANUARY, ALLOW_WATER_FEBRUARY, ALLOW_WATER_MARCH, ALLOW_WATER_APRIL,
	ALLOW_WATER_MAY, ALLOW_WATER_JUNE, ALLOW_WATER_JULY, ALLOW_WATER_AUGUST,
	ALLOW_WATER_SEPTEMBER, ALLOW_WATER_OCTOBER, ALLOW_WATER_NOVEMBER, ALLOW_WATER_DECEMBER,
	ALLOW_CREW, ALLOW_DAY,
	ALLOW_SUN_FULL, ALLOW_SUN_PART, ALLOW_SUN_LEAST,
	ALLOW_PATH_CLEAR, ALLOW_BARROW_CLEAR, ALLOW_ARM, ALLOW_LAWN_CLEAR, ALLOW_LAWN_SOIL,
	ALLOW_SOIL_LEAST, ALLOW_FLOOR_STONE, ALLOW_WALL_ABOVE, ALLOW_WALL_FOOTING,
	ALLOW_SLENDER, ALLOW_SLENDER_LONG, ALLOW_FIXTURE_SLENDER, ALLOW_GATE_CLEAR,
	ALLOW_FENCE_HIGH, ALLOW_FENCE_GAP, ALLOW_HOUSE_CLEAR, ALLOW_SERVICE_NEAR,
	ALLOW_FALL_NEAR, ALLOW_FALL_PATH, ALLOW_FALL_GROUND,
	BED_BUILD, BED_BLOCK, BED_JOINT, BED_DENSITY, BED_COURSES, BED_CAP, BED_EMBED, BED_INSIDE,
	BED_BASE, BED_REACH, BED_REACH_IN, BED_LINER, BED_FREEBOARD, BED_MULCH, BED_MIX,
	BED_PREPARE, BED_AMEND, BED_REPLACE, BED_WATER, BED_DRIP_ROW, BED_DRIP_EMITTER,
	PATH_BASE, PATH_SURFACE, PATH_STONE, PATH_FABRIC, PATH_EDGING,
	LAWN_COVER, LAWN_TOPSOIL, LAWN_THICKNESS,
	FIXTURE_HEIGHT, FIXTURE_BASE, FIXTURE_DIAL,
	FENCE_HEIGHT, FENCE_SECTION, FENCE_POST, FENCE_GATE_POST, FENCE_GAP, FENCE_RAILS,
	FENCE_DEPTH, FENCE_HOLE, FENCE_GRAVEL, FENCE_INSET, FENCE_GATE_GAPS, FENCE_LEAF,
	FENCE_LEAF_FROM,
	RATE_STRIP, RATE_DIG, RATE_HOLE, RATE_POST,
	RATE_LOAD, RATE_BARROW, RATE_TAMP, RATE_FABRIC, RATE_BASE, RATE_FIXTURE,
	RATE_BLOCK, RATE_CAP, RATE_CUT, RATE_BACKFILL, RATE_LOOSEN, RATE_PREPARE, RATE_LINER,
	RATE_FILL, RATE_EDGING, RATE_SURFACE, RATE_PANEL, RATE_GATE, RATE_PLANT, RATE_MULCH,
	RATE_TOPSOIL, RATE_TURF, RATE_SEED,
	SERVICE_DEPTH, SERVICE_OWNER, SERVICE_TRENCH, SERVICE_BELOW,
	PLANT_SPACING, PLANT_SPREAD, PLANT_HEIGHT, PLANT_PATTERN, PLANT_SUN, PLANT_SOIL,
	PLANT_POT, PLANT_FROM, PLANT_UNTIL, PLANT_PRICE
};
enum { ATTRIBUTES = PLANT_PRICE + 1 };

/* Four-way has the bits of both others; half-turn, alone, has none of them. */
enum mirror_kind { MIRROR_OFF, MIRROR_LEFT_RIGHT, MIRROR_TOP_BOTTOM, MIRROR_FOUR_WAY,
	MIRROR_HALF_TURN };
enum bed_build { BUILD_RAISED, BUILD_LEVEL };
enum bed_inside { INSIDE_UNDUG, INSIDE_FILLED, INSIDE_BASE };
enum bed_water { WATER_NONE, WATER_DRIP };
enum lawn_cover { COVER_TURF, COVER_SEED, COVER_NONE };
enum { CHOICE_NO, CHOICE_YES };
enum subsoil { SUBSOIL_LOAM, SUBSOIL_CLAY, SUBSOIL_SAND };
enum tamper { TAMPER_PLATE, TAMPER_HAND };
enum stone_grading { STONE_FINES, STONE_CLEAN };
enum leaf_from { LEAF_BOUGHT, LEAF_OFFCUT };
enum service_owner { OWNER_PUBLIC, OWNER_PRIVATE };
enum plant_pattern { PATTERN_TRIANGULAR, PATTERN_SQUARE };
/* The least light a plant needs: by the classes of hours of sun. */
enum plant_sun { NEEDS_FULL_SUN, NEEDS_PART_SUN, NEEDS_PART_SHADE, NEEDS_NO_SUN };

/* The cards that share out the attributes of allow. */
enum allow_card {
	CARD_WALLS, CARD_GROUND, CARD_STONE, CARD_HAULING, CARD_FABRIC, CARD_POSTS,
	CARD_PLANTS, CARD_WATER, CARD_CREW, CARD_SUN, CARD_SNAGS
};
enum { ALLOW_CARDS = CARD_SNAGS + 1 };

/* What must be there for an attribute to matter. */
enum subject {
	SUBJECT_ANY,    /* nothing: it always does */
	SUBJECT_NONE,   /* no figure of the takeoff rests on it */
	SUBJECT_RAISED, SUBJECT_LEVEL, /* of a bed: it is raised, at ground level */
	SUBJECT_LOAM, SUBJECT_CLAY, SUBJECT_SAND, /* the subsoil is that */
	SUBJECT_GOODS,  /* goods that are weighed by it */
	SUBJECT_BULK,   /* goods bought in bulk */
	SUBJECT_STONE, SUBJECT_FABRIC, SUBJECT_LINER, SUBJECT_EDGING, SUBJECT_LAWN, SUBJECT_FENCE,
	SUBJECT_HOUSE, SUBJECT_SERVICE, SUBJECT_PLANTS,
	SUBJECT_WATER,  /* a bed is watered */
	SUBJECT_SLEEVE, /* services, or a header that lies in sleeves */
	SUBJECT_LEVELS, /* levels, or a finished ground that is told */
	SUBJECT_FENCE_LEVELS /* a fence besides */
};

enum { MEANING_MOST = 80 }; /* a row of a small screen */

struct attribute_row {
	const char *keyword;    /* one word, or several: "water july" */
	const char *label;      /* in cards and reports */
	const char *meaning;    /* what it is, in a sentence of MEANING_MOST columns at most */
	struct value_rule rule; /* what may be read */
	/* The default; unset where there is none, or it depends on the rest of the plot: `derived`
	 * then says how in a few words. */
	struct value preset;
	const char *derived;
	const char *source;     /* of the default; NULL: common practice, no published source */
	/* A rounder default of a metric plot, common practice without a published source; unset:
	 * the same default. */
	struct value metric;
	const char *derived_metric; /* in place of `derived` in a metric plot; NULL: the same */
	/* The same in so few words that a field has room for them; NULL: as above. */
	const char *brief, *brief_metric;
	enum allow_card card; /* of an attribute of allow */
	enum subject subject;
	bool required;
};

/* The cards as they are listed: "Allowed for: walls and soil", "The plot itself". */
extern const char *const allow_card_titles[ALLOW_CARDS];
#define HEAD_CARD_TITLE "The plot itself"

const struct attribute_row *attribute_row(enum attribute a);
/* The default in a plot of these units; unset where there is none, or it is derived. */
const struct value *attribute_preset(enum attribute a, enum units units);
/* Whether its default in a metric plot is another than in an imperial one. */
bool attribute_is_rounder(enum attribute a);
/* How a derived default is found; NULL for all others. */
const char *attribute_derived(enum attribute a, enum units units);
/* The same, to stand in a field. */
const char *attribute_brief(enum attribute a, enum units units);
/* The source of the default; NULL: common practice, no published source. */
const char *attribute_source(enum attribute a, enum units units);
enum block_kind attribute_block(enum attribute a);
/* The keyword of a block: "allow", "bed" ...; NULL for the head. That of the rates begins each of
 * their lines. */
const char *block_keyword(enum block_kind block);
/* First and last attribute of a block. */
enum attribute block_first(enum block_kind block);
enum attribute block_last(enum block_kind block);
/* How many attributes a block has. */
size_t block_attributes(enum block_kind block);
/* Finds a keyword in a block; false where the block has none such. */
bool attribute_find(enum block_kind block, const char *word, size_t length, enum attribute *found);
/* The same of a line, taking the keyword's words; false where it begins with none such. */
bool attribute_scan(enum block_kind block, struct scan *s, enum attribute *found);

#endif
