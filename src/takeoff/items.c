#include "takeoff/items.h"
#include "takeoff/ground/fill.h"
#include "takeoff/common/item_rows.h"
#include "base/show.h"

#include <ctype.h>
#include <math.h>
#include <string.h>

/* Sums of metres may end a hair above a whole number of packs; no pack is bought for that. */
static const double HAIR = 1e-9;

static void add_blocks(struct items *items, const struct takeoff *takeoff)
{
	const char *note = item_percent(items->arena,
		block_number(takeoff->allow, ALLOW_BREAKAGE), "breakage");

	for (int i = 0; i < takeoff->cutting_count; i++) {
		const struct cutting *cutting = &takeoff->cuttings[i];
		bool is_cap = cutting->use == USE_CAP;

		item_add(items, &(struct item){ .id = is_cap ? "block.cap" : "block.wall",
			.section = SECTION_WALLS, .label = is_cap ? "Cap block" : "Wall block",
			.unit = UNIT_EACH, .block = cutting->block, .laid = (double)cutting->bought,
			.spare = (double)cutting->breakage,
			.order = (double)(cutting->bought + cutting->breakage), .note = note });
	}
}

static void add_adhesive(struct items *items, const struct takeoff *takeoff,
	const struct plot *plot)
{
	nm cartridge = block_length(takeoff->allow, ALLOW_CARTRIDGE);
	struct text bead_words = TEXT_EMPTY;
	double bead = 0;

	for (int i = 0; i < takeoff->wall_count; i++)
		bead += takeoff->walls[i].bead;
	if (bead <= 0)
		return;
	double cartridges = bead * (double)NM_PER_M / (double)cartridge;

	show_length(&bead_words, cartridge, plot_units(plot));
	item_add(items, &(struct item){ .id = "adhesive.cartridge", .section = SECTION_WALLS,
		.label = "Adhesive, cartridge", .unit = UNIT_EACH, .laid = cartridges,
		.order = ceil(cartridges - HAIR),
		.note = arena_print(items->arena, "whole; bead %s each", bead_words.bytes) });
	text_fini(&bead_words);
}

/* "Sharp sand" for sharp-sand. */
static const char *part_label(struct arena *arena, const char *name)
{
	char *label = arena_print(arena, "%s", name);

	label[0] = (char)toupper((unsigned char)label[0]);
	for (char *c = label; *c; c++)
		if (*c == '-')
			*c = ' ';
	return label;
}

static struct item *soil_row(struct items *items, size_t first, const char *name)
{
	const char *id = arena_print(items->arena, "soil.%s", name);

	for (size_t i = first; i < items->count; i++)
		if (strcmp(items->rows[i].id, id) == 0)
			return &items->rows[i];
	return item_add(items, &(struct item){ .id = id, .section = SECTION_FILL,
		.label = part_label(items->arena, name), .unit = UNIT_M3 });
}

/* "15 % settlement; 12.0 cu ft is dug here". */
static void note_reuse(struct items *items, size_t first, enum units units)
{
	for (size_t i = first; i < items->count; i++) {
		struct item *row = &items->rows[i];
		struct text words = TEXT_EMPTY;

		if (row->reused <= 0)
			continue;
		show_volume(&words, row->reused, units);
		row->note = arena_print(items->arena, "%s%s%s is dug here", row->note ? row->note : "",
			row->note ? "; " : "", words.bytes);
		text_fini(&words);
	}
}

static void add_soil(struct items *items, const struct takeoff *takeoff, enum units units)
{
	size_t first = items->count;
	const char *note = item_percent(items->arena,
		block_number(takeoff->allow, ALLOW_SETTLEMENT), "settlement");

	for (int i = 0; i < takeoff->fill_count; i++) {
		const struct fill *fill = &takeoff->fills[i];

		for (int j = 0; fill->order > 0 && j < fill->part_count; j++) {
			struct item *row = soil_row(items, first, fill->parts[j].name);
			double order = fill->parts[j].volume;
			double laid = order * (fill->soil / fill->order);

			row->laid += laid;
			row->spare += order - laid;
			row->reused += fill_reused(takeoff, &fill->parts[j]);
			row->order += order - fill_reused(takeoff, &fill->parts[j]);
			if (fill->order > fill->soil)
				row->note = note;
		}
	}
	note_reuse(items, first, units);
}

static void add_mulch(struct items *items, const struct takeoff *takeoff)
{
	double mulch = 0;

	for (int i = 0; i < takeoff->fill_count; i++)
		mulch += takeoff->fills[i].mulch;
	if (mulch > 0)
		item_add(items, &(struct item){ .id = "mulch", .section = SECTION_FILL,
			.label = "Mulch", .unit = UNIT_M3, .laid = mulch, .order = mulch });
}

void items_compute(struct takeoff *takeoff, struct arena *arena, const struct plot *plot)
{
	struct items items = { .arena = arena };

	dig_items(&items, takeoff);
	stone_items(&items, takeoff);
	fabric_items(&items, takeoff, plot);
	liner_items(&items, takeoff, plot);
	edging_items(&items, takeoff, plot);
	add_blocks(&items, takeoff);
	add_adhesive(&items, takeoff, plot);
	add_soil(&items, takeoff, plot_units(plot));
	add_mulch(&items, takeoff);
	lawn_items(&items, takeoff);
	fencing_items(&items, takeoff, plot);
	takeoff->items = items.rows;
	takeoff->item_count = (int)items.count;
}
