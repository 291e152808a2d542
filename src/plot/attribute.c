#include "plot/attribute_rows.h"

static const struct attribute_table *const tables[BLOCK_KINDS] = {
	[BLOCK_HEAD] = &head_attributes, [BLOCK_ALLOW] = &allow_attributes,
	[BLOCK_BED] = &bed_attributes, [BLOCK_PATH] = &path_attributes,
	[BLOCK_LAWN] = &lawn_attributes, [BLOCK_FIXTURE] = &fixture_attributes,
	[BLOCK_FENCE] = &fence_attributes, [BLOCK_RATES] = &rate_attributes,
	[BLOCK_SERVICE] = &service_attributes, [BLOCK_PLANT] = &plant_attributes,
};

const char *const yes_words[] = { "no", "yes", NULL };

enum block_kind attribute_block(enum attribute a)
{
	int block = 0;

	while (a > block_last((enum block_kind)block))
		block++;
	return (enum block_kind)block;
}

const struct attribute_row *attribute_row(enum attribute a)
{
	const struct attribute_table *table = tables[attribute_block(a)];

	return &table->rows[a - table->first];
}

const struct value *attribute_preset(enum attribute a, enum units units)
{
	const struct attribute_row *row = attribute_row(a);

	return units == UNITS_METRIC && row->metric.set ? &row->metric : &row->preset;
}

bool attribute_is_rounder(enum attribute a)
{
	return attribute_row(a)->metric.set || attribute_row(a)->derived_metric;
}

const char *attribute_derived(enum attribute a, enum units units)
{
	const struct attribute_row *row = attribute_row(a);

	return units == UNITS_METRIC && row->derived_metric ? row->derived_metric : row->derived;
}

const char *attribute_brief(enum attribute a, enum units units)
{
	const struct attribute_row *row = attribute_row(a);
	const char *brief = units == UNITS_METRIC && row->brief_metric ? row->brief_metric :
		row->brief;

	return brief ? brief : attribute_derived(a, units);
}

const char *attribute_source(enum attribute a, enum units units)
{
	const struct attribute_row *row = attribute_row(a);

	return units == UNITS_METRIC && row->metric.set ? NULL : row->source;
}

const char *block_keyword(enum block_kind block)
{
	return tables[block]->keyword;
}

enum attribute block_first(enum block_kind block)
{
	return tables[block]->first;
}

enum attribute block_last(enum block_kind block)
{
	return (enum attribute)((int)block_first(block) + tables[block]->count - 1);
}

size_t block_attributes(enum block_kind block)
{
	return (size_t)tables[block]->count;
}

bool attribute_find(enum block_kind block, const char *word, size_t length, enum attribute *found)
{
	for (enum attribute a = block_first(block); a <= block_last(block); a++) {
		if (scan_word_is(word, length, attribute_row(a)->keyword)) {
			*found = a;
			return true;
		}
	}
	return false;
}

bool attribute_scan(enum block_kind block, struct scan *s, enum attribute *found)
{
	for (enum attribute a = block_first(block); a <= block_last(block); a++) {
		if (scan_take_words(s, attribute_row(a)->keyword)) {
			*found = a;
			return true;
		}
	}
	return false;
}
