#include "base/measure.h"
#include "base/stop.h"
#include "takeoff/planting/planting.h"

static nm told_length(const struct block *block, enum attribute a)
{
	const struct value *value = block_value(block, a);

	return value->set ? value->as.length : 0;
}

/* January is 1. */
static int told_month(const struct block *block, enum attribute a)
{
	const struct value *value = block_value(block, a);

	return value->set ? (int)value->as.number + 1 : 0;
}

static struct plant_sum sum_of(const struct plant *plant)
{
	const struct block *block = &plant->block;
	const struct value *light = block_value(block, PLANT_SUN);

	return (struct plant_sum){ .plant = plant, .letter = plant->letter, .name = plant->name,
		.spacing = block_length(block, PLANT_SPACING),
		.spread = block_length(block, PLANT_SPREAD),
		.height = told_length(block, PLANT_HEIGHT), .soil = told_length(block, PLANT_SOIL),
		.pot = told_length(block, PLANT_POT),
		.pattern = (unsigned int)block_number(block, PLANT_PATTERN),
		.light = light->set ? (unsigned int)light->as.number : PLANT_LIGHT_UNTOLD,
		.from = told_month(block, PLANT_FROM), .until = told_month(block, PLANT_UNTIL) };
}

void planting_sum(struct planting *planting, const struct plants *plants,
	const struct basis *basis)
{
	double share = 1 + block_share(basis->allow, ALLOW_PLANT_SPARE);
	struct plant_sum *sums = arena_new(basis->arena, plants->count, sizeof *sums);

	for (size_t i = 0; i < plants->count; i++)
		sums[i] = sum_of(&plants->items[i]);
	for (int i = 0; i < planting->count && !stop_asked(); i++) {
		const struct planting_row *row = &planting->list[i];

		sums[row->kind].specimens += row->specimens;
		sums[row->kind].in_drifts += row->in_drifts;
		sums[row->kind].count += row->count;
	}
	for (size_t i = 0; i < plants->count; i++)
		sums[i].order = sums[i].specimens +
			(int64_t)whole((double)sums[i].in_drifts * share);
	planting->plants = sums;
}

/* To the hundredth. */
static struct own_price price_of(const struct plant *plant)
{
	const struct value *price = block_value(&plant->block, PLANT_PRICE);

	return price->set ? (struct own_price){ true,
		(price->as.number + MILLION / 200) / (MILLION / 100) } : (struct own_price){ 0 };
}

void planting_items(struct item_list *items, const struct planting *planting)
{
	int64_t share = block_number(items->allow, ALLOW_PLANT_SPARE);

	for (int i = 0; i < planting->plant_count; i++) {
		const struct plant_sum *sum = &planting->plants[i];
		double drifts = (double)sum->in_drifts;

		if (sum->count > 0)
			item_add(items, &(struct item){ .good = GOOD_PLANT, .name = sum->name,
				.section = SECTION_PLANTS, .laid = (double)sum->count,
				.spare = drifts * block_share(items->allow, ALLOW_PLANT_SPARE),
				.order = (double)sum->order,
				.own_price = price_of(sum->plant),
				.note = { .kind = NOTE_PLANT, .percent = drifts > 0 ? share : 0,
					.lengths = { sum->pot } } });
	}
}

/* ---- Figures --------------------------------------------------------------------------------- */

static const struct figure spot_figures[] = {
	{ "at_m", NULL, NULL, FIELD(SPOT, planted_spot, at) },
};
static const struct figure_table spot_table = FIGURE_TABLE(planted_spot, spot_figures);

static const struct figure row_figures[] = {
	{ "bed", "Place", "", FIELD(REGION, planting_row, region), .flags = PANEL_TITLE | ROW_KEY },
	{ "letter", "", NULL, FIELD(LETTER, planting_row, letter), .flags = ROW_KEY },
	{ "name", "Plant", "", FIELD(TEXT, planting_row, name),
		.flags = PANEL_TITLE | TEXT_WRAPS },
	{ "specimens", "Specimens", "Specimens", FIELD(COUNT, planting_row, specimens),
		.flags = PANEL_OPTIONAL | TEXT_DASHED },
	{ "in_drifts", "In drifts", "In drifts", FIELD(COUNT, planting_row, in_drifts),
		.flags = PANEL_OPTIONAL | TEXT_DASHED },
	{ "count", "Plants", "Plants", FIELD(COUNT, planting_row, count), .flags = ROW_NEEDED },
	{ "area_m2", "Area of drifts", NULL, FIELD(AREA, planting_row, area),
		.flags = TEXT_DASHED },
	{ "by_area", "By area", NULL, FIELD(NUMBER, planting_row, by_area),
		.flags = TEXT_DASHED },
	{ "bed_needs_soil_m", NULL, "Soil needed here", FIELD(INCHES, planting_row, bed_needs),
		.flags = PANEL_OPTIONAL | JSON_OPTIONAL },
	{ "bed_soil_m", NULL, "Soil there is", FIELD(INCHES, planting_row, bed_soil),
		.flags = PANEL_OPTIONAL | JSON_OPTIONAL },
	{ "places", NULL, NULL, FIELDS(ROWS, planting_row, spots, spot_count),
		.table = &spot_table, .flags = JSON_SPACED },
};
const struct figure_table planting_table = FIGURE_TABLE(planting_row, row_figures);

const struct word plant_pattern_words[] = {
	[PATTERN_TRIANGULAR] = { "triangular", NULL, NULL },
	[PATTERN_SQUARE] = { "square", NULL, NULL },
};
const struct word plant_light_words[] = {
	[NEEDS_FULL_SUN] = { "full", "full sun", NULL },
	[NEEDS_PART_SUN] = { "part", "part sun", NULL },
	[NEEDS_PART_SHADE] = { "part-shade", "part shade", NULL },
	[NEEDS_NO_SUN] = { "shade", "shade", NULL },
	[PLANT_LIGHT_UNTOLD] = { "untold", "-", NULL },
};

static const struct figure sum_figures[] = {
	{ "letter", "", NULL, FIELD(LETTER, plant_sum, letter), .flags = ROW_KEY },
	{ "name", "Plant", "", FIELD(TEXT, plant_sum, name), .flags = PANEL_TITLE | TEXT_WRAPS },
	{ "count", "Plants", "Plants", FIELD(COUNT, plant_sum, count), .flags = ROW_NEEDED },
	{ "order", "To buy", "To buy", FIELD(COUNT, plant_sum, order) },
	{ "spacing_m", "Apart", "Apart", FIELD(INCHES, plant_sum, spacing) },
	{ "spread_m", NULL, "Spread, grown", FIELD(INCHES, plant_sum, spread) },
	{ "height_m", "Height", "Height, grown", FIELD(INCHES, plant_sum, height),
		.flags = PANEL_OPTIONAL | TEXT_DASHED | JSON_OPTIONAL },
	{ "pattern", NULL, "Rows", FIELD(WORD, plant_sum, pattern),
		.words = plant_pattern_words },
	{ "light", "Least sun", "Least sun", FIELD(WORD, plant_sum, light),
		.words = plant_light_words },
	{ "soil_m", "Soil", "Soil it needs", FIELD(INCHES, plant_sum, soil),
		.flags = PANEL_OPTIONAL | TEXT_DASHED | JSON_OPTIONAL },
	{ "pot_m", NULL, "Pot", FIELD(INCHES, plant_sum, pot),
		.flags = PANEL_OPTIONAL | JSON_OPTIONAL },
	{ "from_month", NULL, NULL, FIELD(COUNT, plant_sum, from), .flags = JSON_OPTIONAL },
	{ "until_month", NULL, NULL, FIELD(COUNT, plant_sum, until), .flags = JSON_OPTIONAL },
};
const struct figure_table plant_table = FIGURE_TABLE(plant_sum, sum_figures);
