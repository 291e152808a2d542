#include "report/text/print.h"
#include "takeoff/fence/fence_values.h"

/* Which beds an attribute matters to; or plots that have such a thing. */
enum concern {
	CONCERN_NONE, CONCERN_ALL, CONCERN_RAISED, CONCERN_LEVEL, CONCERN_FENCE, CONCERN_STONE,
	CONCERN_FABRIC, CONCERN_LINER, CONCERN_EDGING, CONCERN_LAWN
};

/* Attributes that no figure rests on yet are left out. */
static const enum concern concerns[ATTRIBUTES] = {
	[ALLOW_KERF] = CONCERN_ALL, [ALLOW_FIT] = CONCERN_ALL, [ALLOW_SHORTEST] = CONCERN_ALL,
	[ALLOW_INSIDE] = CONCERN_ALL, [ALLOW_BREAKAGE] = CONCERN_ALL,
	[ALLOW_SETTLEMENT] = CONCERN_ALL, [ALLOW_BEADS] = CONCERN_ALL,
	[ALLOW_CARTRIDGE] = CONCERN_ALL,
	[ALLOW_TOPSOIL] = CONCERN_ALL, [ALLOW_SOD] = CONCERN_ALL, [ALLOW_SUBSOIL] = CONCERN_ALL,
	[ALLOW_SWELL_TOPSOIL] = CONCERN_ALL, [ALLOW_SWELL_LOAM] = CONCERN_ALL,
	[ALLOW_SWELL_CLAY] = CONCERN_ALL, [ALLOW_SWELL_SAND] = CONCERN_ALL,
	[ALLOW_DENSITY_SPOIL] = CONCERN_ALL, [ALLOW_BARROW_VOLUME] = CONCERN_ALL,
	[ALLOW_BARROW_WEIGHT] = CONCERN_ALL, [ALLOW_PICKUP_WEIGHT] = CONCERN_ALL,
	[ALLOW_TRUCK_VOLUME] = CONCERN_ALL, [ALLOW_TRUCK_WEIGHT] = CONCERN_ALL,
	[BED_BUILD] = CONCERN_ALL, [BED_BLOCK] = CONCERN_RAISED, [BED_DENSITY] = CONCERN_RAISED,
	[BED_COURSES] = CONCERN_RAISED, [BED_CAP] = CONCERN_RAISED, [BED_EMBED] = CONCERN_RAISED,
	[BED_INSIDE] = CONCERN_RAISED, [BED_BASE] = CONCERN_RAISED,
	[BED_REACH] = CONCERN_RAISED, [BED_FREEBOARD] = CONCERN_RAISED,
	[BED_MULCH] = CONCERN_ALL, [BED_MIX] = CONCERN_ALL,
	[BED_PREPARE] = CONCERN_LEVEL, [BED_AMEND] = CONCERN_LEVEL, [BED_REPLACE] = CONCERN_LEVEL,
	[ALLOW_TAMPER] = CONCERN_STONE, [ALLOW_COMPACTION_FINES] = CONCERN_STONE,
	[ALLOW_COMPACTION_CLEAN] = CONCERN_STONE, [ALLOW_STONE_SPARE] = CONCERN_STONE,
	[ALLOW_DENSITY_STONE] = CONCERN_STONE, [ALLOW_FABRIC_WIDTH] = CONCERN_FABRIC,
	[ALLOW_FABRIC_LENGTH] = CONCERN_FABRIC, [ALLOW_FABRIC_LAP] = CONCERN_FABRIC,
	[ALLOW_FABRIC_END_LAP] = CONCERN_FABRIC, [ALLOW_FABRIC_OFFCUT] = CONCERN_FABRIC,
	[ALLOW_FABRIC_PINS] = CONCERN_FABRIC, [ALLOW_LINER_TURN] = CONCERN_LINER,
	[ALLOW_HELD] = CONCERN_EDGING, [ALLOW_EDGING_PIECE] = CONCERN_EDGING,
	[ALLOW_EDGING_SPIKE] = CONCERN_EDGING, [ALLOW_TURF_SPARE] = CONCERN_LAWN,
	[ALLOW_SEED] = CONCERN_LAWN, [BED_LINER] = CONCERN_RAISED, [PATH_STONE] = CONCERN_ALL,
	[PATH_FABRIC] = CONCERN_ALL, [PATH_EDGING] = CONCERN_ALL,
	[ALLOW_FROST] = CONCERN_FENCE, [ALLOW_CONCRETE_BAG] = CONCERN_FENCE,
	[ALLOW_POST_STOCK] = CONCERN_FENCE,
	[FENCE_HEIGHT] = CONCERN_FENCE, [FENCE_SECTION] = CONCERN_FENCE,
	[FENCE_POST] = CONCERN_FENCE, [FENCE_GAP] = CONCERN_FENCE, [FENCE_RAILS] = CONCERN_FENCE,
	[FENCE_DEPTH] = CONCERN_FENCE, [FENCE_HOLE] = CONCERN_FENCE,
	[FENCE_GRAVEL] = CONCERN_FENCE, [FENCE_INSET] = CONCERN_FENCE,
	[FENCE_GATE_GAPS] = CONCERN_FENCE, [FENCE_LEAF] = CONCERN_FENCE,
	[PATH_BASE] = CONCERN_ALL, [PATH_SURFACE] = CONCERN_ALL,
	[LAWN_COVER] = CONCERN_ALL, [LAWN_TOPSOIL] = CONCERN_ALL, [LAWN_THICKNESS] = CONCERN_ALL,
	[FIXTURE_BASE] = CONCERN_ALL,
};

/* How subsoils swell that are not there. */
static bool is_other_swell(const struct block *allow, enum attribute a)
{
	static const enum attribute swells[] = {
		[SUBSOIL_LOAM] = ALLOW_SWELL_LOAM, [SUBSOIL_CLAY] = ALLOW_SWELL_CLAY,
		[SUBSOIL_SAND] = ALLOW_SWELL_SAND,
	};

	return a >= ALLOW_SWELL_LOAM && a <= ALLOW_SWELL_SAND &&
		a != swells[block_number(allow, ALLOW_SUBSOIL)];
}

static bool matters(const struct report *report, const struct block *block, enum attribute a)
{
	bool is_raised = block->kind == BLOCK_BED && block_number(block, BED_BUILD) == BUILD_RAISED;

	switch (concerns[a]) {
	case CONCERN_NONE:
		return false;
	case CONCERN_ALL:
		return true;
	case CONCERN_RAISED:
		return is_raised;
	case CONCERN_LEVEL:
		return !is_raised;
	case CONCERN_FENCE:
		return report->takeoff->fences.count > 0;
	case CONCERN_STONE:
		return report->takeoff->stones.count > 0;
	case CONCERN_FABRIC:
		return report->takeoff->fabric.rolls > 0;
	case CONCERN_LINER:
		return report->takeoff->liners.count > 0;
	case CONCERN_EDGING:
		return report->takeoff->edging.runs > 0;
	case CONCERN_LAWN:
		return report->takeoff->lawns.count > 0;
	}
	return false;
}

static struct value value_in_force(const struct report *report, const struct block *block,
	enum attribute a)
{
	if (block->kind == BLOCK_ALLOW)
		return *block_effective(report->takeoff->allow, a);
	if (a == BED_EMBED)
		return (struct value){ .set = true, .as.length = fill_embed(block, report->takeoff->surface) };
	if (a == FENCE_DEPTH || a == FENCE_HOLE || a == FENCE_INSET)
		return (struct value){ .set = true,
			.as.length = fence_derived(report->takeoff->allow, block, a) };
	return *block_effective(block, a);
}

static const char *origin_words(const struct report *report, const struct block *block,
	enum attribute a)
{
	const struct attribute_row *row = attribute_row(a);
	const char *source = attribute_source(a);
	const char *from = source ? source : row->derived;

	if (block_value(block, a)->set)
		return "";
	if (block->kind == BLOCK_ALLOW && block_value(report->takeoff->allow, a)->set)
		return "price book";
	return say(report, "%s%s%s", source ? "default" : "default *", from ? ": " : "",
		from ? from : "");
}

static void block_print(const struct report *report, const struct block *block)
{
	static const struct table_column columns[] = {
		{ NULL, COLUMN_LEFT }, { NULL, COLUMN_WRAPS }, { NULL, COLUMN_WRAPS },
	};
	struct hand_table table = hand_table(columns, 3, 2);

	for (size_t i = 0; i < block->notes.count; i++)
		TABLE_ROW(&table, "Note", block->notes.texts[i], "");
	for (enum attribute a = block_first(block->kind); a <= block_last(block->kind); a++) {
		struct text words = TEXT_EMPTY;
		struct value value;

		if (!matters(report, block, a) || is_other_swell(report->takeoff->allow, a))
			continue;
		value = value_in_force(report, block, a);
		value_write(&words, &attribute_row(a)->rule, &value, report->units);
		TABLE_ROW(&table, attribute_row(a)->label, say_text(report, &words),
			origin_words(report, block, a));
	}
	hand_table_print(&table, report->out);
}

static void entry_print(const struct report *report, const struct entry *entry)
{
	static const char *const words[] = {
		[CLASS_BED] = "Bed", [CLASS_PATH] = "Path", [CLASS_LAWN] = "Lawn",
		[CLASS_FIXTURE] = "Fixture",
	};

	print_blank(report);
	print_lines(report, 0, 2, "%s %c, %s", words[entry->class], entry->letter, entry->name);
	block_print(report, &entry->block);
}

static void fence_print(const struct report *report, const struct fence *fence)
{
	print_blank(report);
	print_lines(report, 0, 2, "Fence, %s", fence->name);
	block_print(report, &fence->block);
}

static void print_rules(const struct report *report)
{
	print_lines(report, 0, 2, "%s", report->units == UNITS_IMPERIAL ?
		"The block is the size as laid (face plus joint): measure one of yours. A nominal 16 in "
		"block that measures 15 5/8 in leaves an 8 ft side 2 1/4 in short." :
		"The block is the size as laid (face plus joint): measure one of yours. A nominal "
		"400 mm block that measures 390 mm leaves a 4 m side 100 mm short.");
	print_lines(report, 0, 2, "Blocks are rectangular and square-ended, without lip or "
		"setback; caps do not overhang.");
	print_lines(report, 0, 2, "Walls stand inside the bed's outline, their outer face on it; "
		"every raised bed has its own wall all round.");
	print_lines(report, 0, 2, "Running bond: joints stand a quarter block or more from those "
		"of the course below (TMS 402, IRC).");
	print_lines(report, 0, 2, "Soil is counted by the ground between the walls, and by the "
		"depth really filled: the wall's height less freeboard and mulch, and less the embed "
		"where the ground inside stays undug.");
}

void print_assumed(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	bool has_bed = false, has_ground = false;

	for (int i = 0; i < takeoff->areas.count; i++) {
		const struct area_row *area = &takeoff->areas.list[i];
		bool is_laid = area->cells > 0 && area->entry;

		has_ground = has_ground || is_laid;
		has_bed = has_bed || (is_laid && area->entry->class == CLASS_BED);
	}
	if (!has_ground && takeoff->fences.count == 0)
		return;
	page_heading(report->out, "Assumed");
	if (has_bed)
		print_rules(report);
	print_note(report, "Values without a word behind them are set in the plot. "
		"default *: common practice, no published source; set your own in the plot.");
	sink_add(report->out, "\nThe whole plot\n");
	block_print(report, &report->plot->details.allow);
	for (int i = 0; i < takeoff->areas.count; i++) {
		const struct area_row *area = &takeoff->areas.list[i];

		if (area->cells > 0 && area->entry)
			entry_print(report, area->entry);
	}
	for (int i = 0; i < takeoff->fences.count; i++)
		fence_print(report, takeoff->fences.list[i].fence);
}
