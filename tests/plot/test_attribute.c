/* Laws of the table of attributes, and blocks that hold their values. */
#include "plot/block.h"
#include "base/memory.h"
#include "support/details.h"
#include "support/runner.h"

#include <ctype.h>
#include <stdlib.h>
#include <string.h>

#define COUNT(table) ((int)(sizeof(table) / sizeof *(table)))

START_TEST(a_row_has_a_keyword_a_label_and_its_own_block)
{
	enum attribute a = (enum attribute)_i;
	const struct attribute_row *row = attribute_row(a);
	enum block_kind block = attribute_block(a);

	ck_assert_ptr_nonnull(row->keyword);
	for (const char *c = row->keyword; *c; c++)
		ck_assert_msg(islower((unsigned char)*c) || *c == '-', "%s", row->keyword);
	ck_assert_str_ne(row->keyword, "note");
	ck_assert_ptr_nonnull(row->label);
	ck_assert(isupper((unsigned char)row->label[0]));
	ck_assert_msg(a >= block_first(block) && a <= block_last(block), "%s", row->keyword);
}
END_TEST

START_TEST(a_keyword_is_there_once_in_its_block)
{
	enum attribute a = (enum attribute)_i, found;
	const struct attribute_row *row = attribute_row(a);
	enum block_kind block = attribute_block(a);

	ck_assert(attribute_find(block, row->keyword, strlen(row->keyword), &found));
	ck_assert_int_eq(found, a);
	for (enum attribute other = block_first(block); other <= block_last(block); other++)
		ck_assert_msg(other == a || strcmp(attribute_row(other)->keyword,
			row->keyword) != 0,
			"%s twice", row->keyword);
	/* Not in part, and nothing beyond the length is looked at. */
	ck_assert(!attribute_find(block, row->keyword, strlen(row->keyword) - 1, &found));
	ck_assert(!attribute_find(block, row->keyword, 0, &found));
}
END_TEST

START_TEST(keywords_of_the_head_are_none_of_the_words_that_open_a_block)
{
	enum attribute found;

	for (enum block_kind block = BLOCK_ALLOW; block <= BLOCK_FENCE; block++)
		ck_assert(!attribute_find(BLOCK_HEAD, block_keyword(block),
			strlen(block_keyword(block)), &found));
	ck_assert_ptr_null(block_keyword(BLOCK_HEAD));
	ck_assert(!attribute_find(BLOCK_HEAD, "ground", 6, &found));
	ck_assert(!attribute_find(BLOCK_PATH, "courses", 7, &found));
}
END_TEST

START_TEST(blocks_share_out_the_whole_table)
{
	int next = 0;

	for (enum block_kind block = BLOCK_HEAD; block <= BLOCK_FENCE; block++) {
		ck_assert_int_eq(block_first(block), next);
		ck_assert_uint_eq(block_attributes(block),
			(size_t)(block_last(block) - block_first(block)) + 1);
		next = (int)block_last(block) + 1;
	}
	ck_assert_int_eq(next, ATTRIBUTES);
}
END_TEST

/* A default is a value that could be set: it is written and read as itself. */
START_TEST(a_default_is_in_range_or_its_absence_explained)
{
	const struct attribute_row *row = attribute_row((enum attribute)_i);
	struct text text = TEXT_EMPTY;
	struct value again;
	struct diag d;

	ck_assert_msg(row->preset.set + (row->derived != NULL) + row->required == 1, "%s",
		row->keyword);
	if (!row->preset.set)
		return;
	value_write(&text, &row->rule, &row->preset, UNITS_IMPERIAL);
	struct scan s = scan_start(text.bytes, text.length, 1);
	ck_assert_msg(value_scan(&s, &row->rule, UNITS_IMPERIAL, &again, &d), "%s: %s",
		row->keyword, d.expected);
	ck_assert(value_equal(row->rule.kind, &row->preset, &again));
	value_fini(row->rule.kind, &again);
	text_fini(&text);
}
END_TEST

/* Common practice, no published source, unless attribute_source names one; each as a person would
 * write it, so that a slip in the table's arithmetic shows. */
static const struct {
	enum attribute attribute;
	const char *text;
} defaults[] = {
	{ HEAD_NORTH, "0" }, { HEAD_MIRROR, "off" },
	{ ALLOW_KERF, "1/8 in" }, { ALLOW_FIT, "1/8 in" }, { ALLOW_SHORTEST, "3 in" },
	{ ALLOW_INSIDE, "8 in" }, { ALLOW_BREAKAGE, "5 %" }, { ALLOW_SETTLEMENT, "15 %" },
	{ ALLOW_BEADS, "2" }, { ALLOW_CARTRIDGE, "30 ft" },
	{ ALLOW_TOPSOIL, "0 in" }, { ALLOW_SOD, "2 in" }, { ALLOW_SUBSOIL, "loam" },
	{ ALLOW_FROST, "0 in" }, { ALLOW_HELD, "none" }, { ALLOW_TAMPER, "plate" },
	{ ALLOW_SWELL_TOPSOIL, "25 %" }, { ALLOW_SWELL_LOAM, "25 %" }, { ALLOW_SWELL_CLAY, "40 %" },
	{ ALLOW_SWELL_SAND, "12 %" }, { ALLOW_COMPACTION_FINES, "1.2" },
	{ ALLOW_COMPACTION_CLEAN, "1.05" }, { ALLOW_STONE_SPARE, "5 %" },
	{ ALLOW_TURF_SPARE, "5 %" },
	{ ALLOW_SEED, "6 lb/1000 sq ft" }, { ALLOW_DENSITY_STONE, "2700 lb/cu yd" },
	{ ALLOW_DENSITY_SOIL, "2000 lb/cu yd" }, { ALLOW_DENSITY_COMPOST, "1100 lb/cu yd" },
	{ ALLOW_DENSITY_MULCH, "600 lb/cu yd" }, { ALLOW_DENSITY_SPOIL, "2100 lb/cu yd" },
	{ ALLOW_BARROW_VOLUME, "6 cu ft" }, { ALLOW_BARROW_WEIGHT, "300 lb" },
	{ ALLOW_PICKUP_WEIGHT, "1500 lb" }, { ALLOW_TRUCK_VOLUME, "10 cu yd" },
	{ ALLOW_TRUCK_WEIGHT, "20000 lb" }, { ALLOW_TRUCK_STEP, "0.5 cu yd" },
	{ ALLOW_FABRIC_WIDTH, "6 ft" }, { ALLOW_FABRIC_LENGTH, "100 ft" },
	{ ALLOW_FABRIC_LAP, "6 in" },
	{ ALLOW_FABRIC_END_LAP, "1 ft" }, { ALLOW_FABRIC_OFFCUT, "3 ft" },
	{ ALLOW_FABRIC_PINS, "3 ft" },
	{ ALLOW_LINER_TURN, "6 in" }, { ALLOW_EDGING_PIECE, "8 ft" },
	{ ALLOW_EDGING_SPIKE, "2 ft" },
	{ ALLOW_CONCRETE_BAG, "0.6 cu ft" }, { ALLOW_POST_STOCK, "1 ft" },
	{ BED_BUILD, "raised" }, { BED_BLOCK, "16 in x 8 in x 6 in" },
	{ BED_DENSITY, "135 lb/cu ft" },
	{ BED_COURSES, "3" }, { BED_CAP, "none" }, { BED_INSIDE, "undug" }, { BED_BASE, "4 in" },
	{ BED_REACH, "6 in" }, { BED_LINER, "yes" },
	{ BED_FREEBOARD, "1 1/2 in" }, { BED_MULCH, "2 in" }, { BED_MIX, "topsoil 1, compost 1" },
	{ BED_PREPARE, "8 in" }, { BED_AMEND, "2 in" }, { BED_REPLACE, "no" },
	{ PATH_BASE, "4 in" }, { PATH_SURFACE, "1 1/2 in" },
	{ PATH_STONE, "fines" }, { PATH_FABRIC, "yes" }, { PATH_EDGING, "yes" },
	{ LAWN_COVER, "turf" }, { LAWN_TOPSOIL, "2 in" },
	{ LAWN_THICKNESS, "3/4 in" },
	{ FIXTURE_HEIGHT, "0 in" }, { FIXTURE_BASE, "4 in" },
	{ FENCE_HEIGHT, "3 ft" }, { FENCE_SECTION, "8 ft" }, { FENCE_POST, "3 1/2 in" },
	{ FENCE_GAP, "2 in" }, { FENCE_RAILS, "2" }, { FENCE_GRAVEL, "6 in" },
	{ FENCE_GATE_GAPS, "1 1/4 in" }, { FENCE_LEAF, "4 ft" },
};

START_TEST(a_default_is_what_the_manual_says)
{
	const struct attribute_row *row = attribute_row(defaults[_i].attribute);
	struct text text = TEXT_EMPTY;

	ck_assert(row->preset.set);
	value_write(&text, &row->rule, &row->preset, UNITS_IMPERIAL);
	ck_assert_str_eq(text.bytes, defaults[_i].text);
	text_fini(&text);
}
END_TEST

START_TEST(all_other_attributes_have_no_default)
{
	for (enum attribute a = HEAD_TITLE; a <= FENCE_LEAF; a++) {
		bool is_listed = false;

		for (int i = 0; i < COUNT(defaults); i++)
			is_listed = is_listed || defaults[i].attribute == a;
		ck_assert_msg(attribute_row(a)->preset.set == is_listed, "%s",
			attribute_row(a)->keyword);
		ck_assert_msg(is_listed || !attribute_row(a)->source, "%s",
			attribute_row(a)->keyword);
	}
}
END_TEST

/* Least and most, as a person would write them; "" where the attribute has no such range. */
static const struct {
	enum attribute attribute;
	const char *least, *most;
} ranges[] = {
	{ HEAD_CELL, "1 in", "10 ft" }, { HEAD_NORTH, "0", "359.999999" },
	{ HEAD_SITE, "-66", "66" },
	{ ALLOW_KERF, "0 in", "1 in" }, { ALLOW_FIT, "0 in", "1 in" },
	{ ALLOW_SHORTEST, "0 in", "1 m" },
	{ ALLOW_INSIDE, "0 in", "1 m" }, { ALLOW_BREAKAGE, "0 %", "100 %" },
	{ ALLOW_SETTLEMENT, "0 %", "100 %" }, { ALLOW_BEADS, "1", "4" },
	{ ALLOW_CARTRIDGE, "1 in", "1000 m" },
	{ ALLOW_TOPSOIL, "0 in", "2 m" }, { ALLOW_SOD, "0 in", "2 m" },
	{ ALLOW_FROST, "0 in", "2 m" },
	{ ALLOW_SWELL_TOPSOIL, "0 %", "100 %" }, { ALLOW_SWELL_LOAM, "0 %", "100 %" },
	{ ALLOW_SWELL_CLAY, "0 %", "100 %" }, { ALLOW_SWELL_SAND, "0 %", "100 %" },
	{ ALLOW_COMPACTION_FINES, "1", "2" }, { ALLOW_COMPACTION_CLEAN, "1", "2" },
	{ ALLOW_STONE_SPARE, "0 %", "100 %" }, { ALLOW_TURF_SPARE, "0 %", "100 %" },
	{ ALLOW_FABRIC_WIDTH, "1 ft", "10 m" }, { ALLOW_FABRIC_LENGTH, "1 m", "1000 m" },
	{ ALLOW_FABRIC_LAP, "0 in", "3 ft" }, { ALLOW_FABRIC_END_LAP, "0 in", "3 ft" },
	{ ALLOW_FABRIC_OFFCUT, "1 in", "10 m" }, { ALLOW_FABRIC_PINS, "1 in", "10 m" },
	{ ALLOW_LINER_TURN, "0 in", "1 m" }, { ALLOW_EDGING_PIECE, "1 in", "30 m" },
	{ ALLOW_EDGING_SPIKE, "1 in", "10 m" }, { ALLOW_POST_STOCK, "1 in", "3 m" },
	{ BED_COURSES, "1", "40" }, { BED_EMBED, "0 in", "2 m" }, { BED_BASE, "0 in", "2 m" },
	{ BED_REACH, "0 in", "1 m" },
	{ BED_FREEBOARD, "0 in", "2 m" }, { BED_MULCH, "0 in", "2 m" },
	{ BED_PREPARE, "0 in", "2 m" },
	{ BED_AMEND, "0 in", "2 m" }, { PATH_BASE, "0 in", "2 m" }, { PATH_SURFACE, "0 in", "2 m" },
	{ LAWN_TOPSOIL, "0 in", "2 m" }, { FIXTURE_HEIGHT, "0 in", "30 m" },
	{ FIXTURE_BASE, "0 in", "2 m" },
	{ LAWN_THICKNESS, "0 in", "2 m" }, { FENCE_HEIGHT, "1 ft", "4 m" },
	{ FENCE_SECTION, "2 ft", "6 m" }, { FENCE_POST, "1 in", "1 ft" },
	{ FENCE_GAP, "0 in", "2 ft" },
	{ FENCE_RAILS, "1", "6" }, { FENCE_DEPTH, "6 in", "3 m" }, { FENCE_HOLE, "2 in", "1 m" },
	{ FENCE_GRAVEL, "0 in", "1 m" }, { FENCE_INSET, "0 in", "1 m" },
	{ FENCE_GATE_GAPS, "0 in", "1 ft" },
	{ FENCE_LEAF, "1 ft", "3 m" },
};

static int64_t number_of(enum attribute a, const char *text)
{
	struct value_rule rule = attribute_row(a)->rule;
	struct scan s = scan_start(text, strlen(text), 1);
	struct value value;
	struct diag d;

	rule.least = INT64_MIN;
	rule.most = INT64_MAX;
	ck_assert(value_scan(&s, &rule, UNITS_IMPERIAL, &value, &d));
	return rule.kind == VALUE_LENGTH ? value.as.length : value.as.number;
}

START_TEST(a_range_is_what_the_manual_says)
{
	const struct value_rule *rule = &attribute_row(ranges[_i].attribute)->rule;

	ck_assert_int_eq(rule->least, number_of(ranges[_i].attribute, ranges[_i].least));
	ck_assert_int_eq(rule->most, number_of(ranges[_i].attribute, ranges[_i].most));
}
END_TEST

/* 1 in to 2 m each, as blocks are made; densities to 10,000 of their unit. */
START_TEST(blocks_have_sides_from_an_inch_to_two_metres)
{
	const struct value_rule *block = &attribute_row(BED_BLOCK)->rule,
		*cap = &attribute_row(BED_CAP)->rule, *density = &attribute_row(BED_DENSITY)->rule;

	ck_assert_int_eq(block->least, NM_PER_INCH);
	ck_assert_int_eq(block->most, 2 * NM_PER_M);
	ck_assert_int_eq(cap->least, NM_PER_INCH);
	ck_assert_int_eq(cap->most, 2 * NM_PER_M);
	ck_assert_int_eq(density->least, MILLION);
	ck_assert_int_eq(density->most, 10000 * MILLION);
}
END_TEST

START_TEST(every_range_is_tested)
{
	for (enum attribute a = HEAD_TITLE; a <= FENCE_LEAF; a++) {
		enum value_kind kind = attribute_row(a)->rule.kind;
		bool is_listed = false;

		for (int i = 0; i < COUNT(ranges); i++)
			is_listed = is_listed || ranges[i].attribute == a;
		ck_assert_msg(is_listed == (kind == VALUE_LENGTH || kind == VALUE_COUNT ||
			kind == VALUE_DECIMAL || kind == VALUE_PERCENT), "%s",
			attribute_row(a)->keyword);
		ck_assert_msg((kind == VALUE_CHOICE) == (attribute_row(a)->rule.words != NULL),
			"%s", attribute_row(a)->keyword);
	}
}
END_TEST

/* The words of a choice stand in the order of the names that the program uses for them. */
START_TEST(words_of_choices_mean_what_their_names_say)
{
	ck_assert_str_eq(attribute_row(HEAD_UNITS)->rule.words[UNITS_METRIC], "metric");
	ck_assert_str_eq(attribute_row(HEAD_MIRROR)->rule.words[MIRROR_LEFT_RIGHT], "left-right");
	ck_assert_str_eq(attribute_row(HEAD_MIRROR)->rule.words[MIRROR_TOP_BOTTOM], "top-bottom");
	ck_assert_str_eq(attribute_row(HEAD_MIRROR)->rule.words[MIRROR_FOUR_WAY], "four-way");
	ck_assert_str_eq(attribute_row(HEAD_MIRROR)->rule.words[MIRROR_HALF_TURN], "half-turn");
	ck_assert_str_eq(attribute_row(BED_BUILD)->rule.words[BUILD_LEVEL], "level");
	ck_assert_str_eq(attribute_row(BED_INSIDE)->rule.words[INSIDE_FILLED], "filled");
	ck_assert_str_eq(attribute_row(BED_INSIDE)->rule.words[INSIDE_BASE], "base");
	ck_assert_str_eq(attribute_row(LAWN_COVER)->rule.words[COVER_SEED], "seed");
	ck_assert_str_eq(attribute_row(LAWN_COVER)->rule.words[COVER_NONE], "none");
	ck_assert_str_eq(attribute_row(BED_REPLACE)->rule.words[CHOICE_YES], "yes");
}
END_TEST

START_TEST(a_block_gives_the_plots_value_or_the_default)
{
	struct block bed = { .kind = BLOCK_BED };

	ck_assert(!block_value(&bed, BED_COURSES)->set);
	ck_assert_int_eq(block_number(&bed, BED_COURSES), 3);
	ck_assert_int_eq(block_length(&bed, BED_BASE), 4 * NM_PER_INCH);
	block_set(&bed, BED_COURSES, (struct value){ .set = true, .as.number = 5 });
	block_set(&bed, BED_BASE, (struct value){ .set = true, .as.length = 7 });
	ck_assert(block_value(&bed, BED_COURSES)->set);
	ck_assert_int_eq(block_number(&bed, BED_COURSES), 5);
	ck_assert_int_eq(block_length(&bed, BED_BASE), 7);
	ck_assert_int_eq(block_effective(&bed, BED_COURSES)->as.number, 5);
	block_set(&bed, BED_COURSES, (struct value){ .set = false });
	ck_assert_int_eq(block_number(&bed, BED_COURSES), 3);
	ck_assert_int_eq(block_length(&bed, BED_BASE), 7);
	block_fini(&bed);
}
END_TEST

START_TEST(what_a_block_held_before_is_freed)
{
	struct block head = { .kind = BLOCK_HEAD };

	for (int i = 0; i < 3; i++)
		block_set(&head, HEAD_TITLE, (struct value){ .set = true,
			.as.text = memory_string("a title that a leak checker would miss") });
	block_add_note(&head, memory_string("a note"));
	block_fini(&head);
	ck_assert(block_is_empty(&head));
	ck_assert_int_eq(head.kind, BLOCK_HEAD);
}
END_TEST

START_TEST(a_block_is_empty_until_something_is_set_or_noted)
{
	struct block path = { .kind = BLOCK_PATH };

	ck_assert(block_is_empty(&path));
	block_set(&path, PATH_SURFACE, (struct value){ .set = true, .as.length = 0 });
	ck_assert(!block_is_empty(&path));
	block_set(&path, PATH_SURFACE, (struct value){ .set = false });
	ck_assert(block_is_empty(&path));
	block_add_note(&path, memory_string("laid in May"));
	ck_assert(!block_is_empty(&path));
	block_fini(&path);
}
END_TEST

START_TEST(a_copy_is_equal_and_shares_nothing)
{
	struct block bed = { .kind = BLOCK_BED }, copy;
	struct ground ground = { 5, 5, NULL };
	struct random random = { 7 };

	for (enum attribute a = block_first(BLOCK_BED); a <= block_last(BLOCK_BED); a++)
		block_set(&bed, a, value_at_random(&random, a, &ground));
	for (int i = 0; i < 20; i++)
		block_add_note(&bed, text_at_random(&random, 1, 9));
	copy = block_copy(&bed);
	ck_assert(block_equal(&bed, &copy));
	block_fini(&bed);
	ck_assert(!block_equal(&bed, &copy));
	ck_assert_uint_eq(copy.notes.count, 20);
	block_fini(&copy);
}
END_TEST

START_TEST(blocks_that_differ_anywhere_are_not_equal)
{
	struct block one = { .kind = BLOCK_PATH }, other = { .kind = BLOCK_LAWN };
	enum attribute last = block_last(BLOCK_PATH);

	ck_assert(!block_equal(&one, &other));
	other.kind = BLOCK_PATH;
	ck_assert(block_equal(&one, &other));
	block_set(&other, last, (struct value){ .set = true, .as.length = 1 });
	ck_assert(!block_equal(&one, &other));
	block_set(&one, last, (struct value){ .set = true, .as.length = 1 });
	ck_assert(block_equal(&one, &other));
	block_add_note(&one, memory_string("a"));
	ck_assert(!block_equal(&one, &other));
	block_add_note(&other, memory_string("b"));
	ck_assert(!block_equal(&one, &other));
	block_fini(&other);
	other = block_copy(&one);
	ck_assert(block_equal(&one, &other));
	block_add_note(&one, memory_string("a"));
	block_add_note(&other, memory_string("b"));
	ck_assert(!block_equal(&one, &other));
	block_fini(&one);
	block_fini(&other);
}
END_TEST

static void add_table(TCase *table)
{
	tcase_add_loop_test(table, a_row_has_a_keyword_a_label_and_its_own_block, 0, ATTRIBUTES);
	tcase_add_loop_test(table, a_keyword_is_there_once_in_its_block, 0, ATTRIBUTES);
	tcase_add_test(table, keywords_of_the_head_are_none_of_the_words_that_open_a_block);
	tcase_add_test(table, blocks_share_out_the_whole_table);
	tcase_add_loop_test(table, a_default_is_in_range_or_its_absence_explained, 0, ATTRIBUTES);
	tcase_add_loop_test(table, a_default_is_what_the_manual_says, 0, COUNT(defaults));
	tcase_add_test(table, all_other_attributes_have_no_default);
	tcase_add_loop_test(table, a_range_is_what_the_manual_says, 0, COUNT(ranges));
	tcase_add_test(table, blocks_have_sides_from_an_inch_to_two_metres);
	tcase_add_test(table, every_range_is_tested);
	tcase_add_test(table, words_of_choices_mean_what_their_names_say);
}

Suite *test_suite(void)
{
	Suite *suite = suite_create("attribute");
	TCase *block = suite_case(suite, "blocks");

	add_table(suite_case(suite, "table"));
	tcase_add_test(block, a_block_gives_the_plots_value_or_the_default);
	tcase_add_test(block, what_a_block_held_before_is_freed);
	tcase_add_test(block, a_block_is_empty_until_something_is_set_or_noted);
	tcase_add_test(block, a_copy_is_equal_and_shares_nothing);
	tcase_add_test(block, blocks_that_differ_anywhere_are_not_equal);
	return suite;
}
