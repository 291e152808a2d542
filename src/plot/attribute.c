#include "plot/attribute.h"
#include "base/memory.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>

#define INCHES(n) ((n) * NM_PER_INCH)
#define METRES(n) ((n) * NM_PER_M)
#define PERCENTS(n) ((n) * MILLION)

#define LENGTH(least_, most_) { .kind = VALUE_LENGTH, .least = (least_), .most = (most_) }
#define DEPTH LENGTH(0, METRES(2))
#define PERCENT { .kind = VALUE_PERCENT, .least = 0, .most = PERCENTS(100) }
#define CHOICE(words_) { .kind = VALUE_CHOICE, .words = (words_) }
#define COUNT(least_, most_) { .kind = VALUE_COUNT, .least = (least_), .most = (most_) }
#define IS_LENGTH(n) { .set = true, .as.length = (n) }
#define IS_NUMBER(n) { .set = true, .as.number = (n) }
#define NO_PRESET { .set = false }

static const char *const units_words[] = { "imperial", "metric", NULL };
static const char *const mirror_words[] = { "off", "left-right", "top-bottom", "four-way",
	"half-turn", NULL };
static const char *const build_words[] = { "raised", "level", NULL };
static const char *const inside_words[] = { "undug", "filled", "base", NULL };
static const char *const cover_words[] = { "turf", "seed", "none", NULL };
static const char *const replace_words[] = { "no", "yes", NULL };

static const struct mix usual_mix = { 2, { { "topsoil", 1000 }, { "compost", 1000 } } };

/* Where a default comes from stands in the next table. */
static const struct attribute_row rows[ATTRIBUTES] = {
	[HEAD_TITLE] = { "title", "Title", BLOCK_HEAD,
		{ .kind = VALUE_TEXT, .least = 0, .most = 120 }, NO_PRESET, "empty", false },
	[HEAD_UNITS] = { "units", "Units shown", BLOCK_HEAD, CHOICE(units_words), NO_PRESET, NULL,
		true },
	[HEAD_CELL] = { "cell", "Side of a cell", BLOCK_HEAD, LENGTH(INCHES(1), INCHES(120)),
		NO_PRESET, NULL, true },
	[HEAD_NORTH] = { "north", "Bearing of plan's up", BLOCK_HEAD,
		{ .kind = VALUE_DECIMAL, .least = 0, .most = 360 * MILLION - 1 }, IS_NUMBER(0), NULL,
		false },
	[HEAD_SITE] = { "site", "Latitude", BLOCK_HEAD,
		{ .kind = VALUE_DECIMAL, .least = -66 * MILLION, .most = 66 * MILLION,
			.is_signed = true }, NO_PRESET, "no sun figures", false },
	[HEAD_MIRROR] = { "mirror", "Mirror", BLOCK_HEAD, CHOICE(mirror_words),
		IS_NUMBER(MIRROR_OFF), NULL, false },
	[HEAD_AXIS] = { "axis", "Axis, in half cells", BLOCK_HEAD, { .kind = VALUE_PLACE },
		NO_PRESET, "the middle", false },

	[ALLOW_KERF] = { "kerf", "Saw kerf", BLOCK_ALLOW, LENGTH(0, INCHES(1)),
		IS_LENGTH(NM_PER_INCH / 8), NULL, false },
	[ALLOW_FIT] = { "fit", "Play of a cut piece", BLOCK_ALLOW, LENGTH(0, INCHES(1)),
		IS_LENGTH(NM_PER_INCH / 8), NULL, false },
	[ALLOW_SHORTEST] = { "shortest", "Shortest piece", BLOCK_ALLOW, LENGTH(0, METRES(1)),
		IS_LENGTH(INCHES(3)), NULL, false },
	[ALLOW_INSIDE] = { "inside", "Clear inside a bed", BLOCK_ALLOW, LENGTH(0, METRES(1)),
		IS_LENGTH(INCHES(8)), NULL, false },
	[ALLOW_BREAKAGE] = { "breakage", "Blocks broken", BLOCK_ALLOW, PERCENT,
		IS_NUMBER(PERCENTS(5)), NULL, false },
	[ALLOW_SETTLEMENT] = { "settlement", "Soil settlement", BLOCK_ALLOW, PERCENT,
		IS_NUMBER(PERCENTS(15)), NULL, false },
	[ALLOW_BEADS] = { "beads", "Beads of adhesive", BLOCK_ALLOW, COUNT(1, 4), IS_NUMBER(2), NULL,
		false },
	[ALLOW_CARTRIDGE] = { "cartridge", "Bead from a cartridge", BLOCK_ALLOW,
		LENGTH(INCHES(1), METRES(1000)), IS_LENGTH(INCHES(360)), NULL, false },

	[BED_BUILD] = { "build", "Built", BLOCK_BED, CHOICE(build_words), IS_NUMBER(BUILD_RAISED),
		NULL, false },
	[BED_BLOCK] = { "block", "Block as laid", BLOCK_BED,
		{ .kind = VALUE_SIZE, .least = INCHES(1), .most = METRES(2) },
		{ .set = true, .as.size = { INCHES(16), INCHES(8), INCHES(6) } }, NULL, false },
	[BED_DENSITY] = { "density", "Density of the block", BLOCK_BED,
		{ .kind = VALUE_DENSITY, .least = MILLION, .most = 10000 * MILLION },
		{ .set = true, .as.density = { 135 * MILLION, DENSITY_LB_CU_FT } }, NULL, false },
	[BED_COURSES] = { "courses", "Courses", BLOCK_BED, COUNT(1, 40), IS_NUMBER(3), NULL, false },
	[BED_CAP] = { "cap", "Cap", BLOCK_BED,
		{ .kind = VALUE_CAP, .least = INCHES(1), .most = METRES(2) },
		{ .set = true, .as.size = { 0, 0, 0 } }, NULL, false },
	[BED_EMBED] = { "embed", "Embed below ground", BLOCK_BED, DEPTH, NO_PRESET,
		"the paths' surface, else 1 1/2 in", false },
	[BED_INSIDE] = { "inside", "Ground inside", BLOCK_BED, CHOICE(inside_words),
		IS_NUMBER(INSIDE_UNDUG), NULL, false },
	[BED_BASE] = { "base", "Base under the wall", BLOCK_BED, DEPTH, IS_LENGTH(INCHES(4)), NULL,
		false },
	[BED_FREEBOARD] = { "freeboard", "Freeboard", BLOCK_BED, DEPTH,
		IS_LENGTH(INCHES(3) / 2), NULL, false },
	[BED_MULCH] = { "mulch", "Mulch", BLOCK_BED, DEPTH, IS_LENGTH(INCHES(2)), NULL, false },
	[BED_MIX] = { "mix", "Mix of the fill", BLOCK_BED, { .kind = VALUE_MIX },
		{ .set = true, .as.mix = &usual_mix }, NULL, false },
	[BED_PREPARE] = { "prepare", "Dug over", BLOCK_BED, DEPTH, IS_LENGTH(INCHES(8)), NULL,
		false },
	[BED_AMEND] = { "amend", "Amendment dug in", BLOCK_BED, DEPTH, IS_LENGTH(INCHES(2)), NULL,
		false },
	[BED_REPLACE] = { "replace", "Soil replaced", BLOCK_BED, CHOICE(replace_words),
		IS_NUMBER(REPLACE_NO), NULL, false },

	[PATH_BASE] = { "base", "Base", BLOCK_PATH, DEPTH, IS_LENGTH(INCHES(4)), NULL, false },
	[PATH_SURFACE] = { "surface", "Surface", BLOCK_PATH, DEPTH, IS_LENGTH(INCHES(3) / 2), NULL,
		false },
	[LAWN_COVER] = { "cover", "Cover", BLOCK_LAWN, CHOICE(cover_words), IS_NUMBER(COVER_TURF),
		NULL, false },
	[LAWN_TOPSOIL] = { "topsoil", "Topsoil", BLOCK_LAWN, DEPTH, IS_LENGTH(INCHES(2)), NULL,
		false },
	[FIXTURE_HEIGHT] = { "height", "Height", BLOCK_FIXTURE, LENGTH(0, METRES(30)), IS_LENGTH(0),
		NULL, false },
	[FIXTURE_BASE] = { "base", "Base", BLOCK_FIXTURE, DEPTH, IS_LENGTH(INCHES(4)), NULL, false },
};

/* All other defaults are common practice with no published source. */
static const char *const sources[ATTRIBUTES] = {
	[ALLOW_SETTLEMENT] = "the middle of 10 to 20 %, a common figure quoted from memory",
	[ALLOW_CARTRIDGE] = "arithmetic: 10 fl oz as a 1/4 in round bead is 30.6 ft, less waste",
	[BED_BASE] = "4 in under walks: trade press on paving",
	[BED_MULCH] = "2 to 3 in over roots: extension advice",
	[BED_MIX] = "equal topsoil and organic matter: K-State Research and Extension",
	[PATH_BASE] = "4 in under walks: trade press on paving",
};

static const struct {
	const char *keyword;
	enum attribute first, last;
} blocks[BLOCK_KINDS] = {
	[BLOCK_HEAD] = { NULL, HEAD_TITLE, HEAD_AXIS },
	[BLOCK_ALLOW] = { "allow", ALLOW_KERF, ALLOW_CARTRIDGE },
	[BLOCK_BED] = { "bed", BED_BUILD, BED_REPLACE },
	[BLOCK_PATH] = { "path", PATH_BASE, PATH_SURFACE },
	[BLOCK_LAWN] = { "lawn", LAWN_COVER, LAWN_TOPSOIL },
	[BLOCK_FIXTURE] = { "fixture", FIXTURE_HEIGHT, FIXTURE_BASE },
};

_Static_assert(BED_REPLACE - BED_BUILD < BLOCK_VALUES_MOST, "the longest block fits");

const struct attribute_row *attribute_row(enum attribute a)
{
	return &rows[a];
}

const char *attribute_source(enum attribute a)
{
	return sources[a];
}

const char *block_keyword(enum block_kind block)
{
	return blocks[block].keyword;
}

enum attribute block_first(enum block_kind block)
{
	return blocks[block].first;
}

enum attribute block_last(enum block_kind block)
{
	return blocks[block].last;
}

bool attribute_find(enum block_kind block, const char *word, size_t length, enum attribute *found)
{
	for (enum attribute a = block_first(block); a <= block_last(block); a++) {
		if (scan_word_is(word, length, rows[a].keyword)) {
			*found = a;
			return true;
		}
	}
	return false;
}

void block_fini(struct block *block)
{
	for (enum attribute a = block_first(block->kind); a <= block_last(block->kind); a++)
		value_fini(rows[a].rule.kind, &block->values[a - block_first(block->kind)]);
	for (size_t i = 0; i < block->notes.count; i++)
		free(block->notes.texts[i]);
	free(block->notes.texts);
	*block = (struct block){ .kind = block->kind };
}

struct block block_copy(const struct block *block)
{
	struct block copy = { .kind = block->kind };
	enum attribute first = block_first(block->kind);

	for (enum attribute a = first; a <= block_last(block->kind); a++)
		copy.values[a - first] = value_copy(rows[a].rule.kind, &block->values[a - first]);
	for (size_t i = 0; i < block->notes.count; i++)
		block_add_note(&copy, memory_string(block->notes.texts[i]));
	return copy;
}

bool block_equal(const struct block *a, const struct block *b)
{
	enum attribute first = block_first(a->kind);

	if (a->kind != b->kind || a->notes.count != b->notes.count)
		return false;
	for (size_t i = 0; i < a->notes.count; i++)
		if (strcmp(a->notes.texts[i], b->notes.texts[i]) != 0)
			return false;
	for (enum attribute at = first; at <= block_last(a->kind); at++)
		if (!value_equal(rows[at].rule.kind, &a->values[at - first], &b->values[at - first]))
			return false;
	return true;
}

bool block_is_empty(const struct block *block)
{
	for (int i = 0; i < BLOCK_VALUES_MOST; i++)
		if (block->values[i].set)
			return false;
	return block->notes.count == 0;
}

void block_add_note(struct block *block, char *text)
{
	struct notes *notes = &block->notes;

	notes->texts = memory_grow(notes->texts, notes->count, &notes->capacity,
		sizeof *notes->texts);
	notes->texts[notes->count++] = text;
}

const struct value *block_value(const struct block *block, enum attribute a)
{
	assert(rows[a].block == block->kind);
	return &block->values[a - block_first(block->kind)];
}

void block_set(struct block *block, enum attribute a, struct value value)
{
	struct value *held = &block->values[a - block_first(block->kind)];

	assert(rows[a].block == block->kind);
	value_fini(rows[a].rule.kind, held);
	*held = value;
}

const struct value *block_effective(const struct block *block, enum attribute a)
{
	const struct value *value = block_value(block, a);

	return value->set ? value : &rows[a].preset;
}

nm block_length(const struct block *block, enum attribute a)
{
	const struct value *value = block_effective(block, a);

	assert(rows[a].rule.kind == VALUE_LENGTH && value->set);
	return value->as.length;
}

int64_t block_number(const struct block *block, enum attribute a)
{
	const struct value *value = block_effective(block, a);

	assert(value->set);
	return value->as.number;
}
