#include "report/text/print.h"
#include "report/words/snag_words.h"
#include "takeoff/fence/fence_values.h"

/* Whether any goods are weighed by the density. */
static bool has_goods(const struct item_list *items, enum attribute density)
{
	for (size_t i = 0; i < items->count; i++)
		if (good_density(items->list[i].good, items->list[i].name) == density)
			return true;
	return false;
}

/* Whether any goods are bought in bulk, in steps that the book does not set. */
static bool has_bulk(const struct item_list *items)
{
	for (size_t i = 0; i < items->count; i++) {
		const struct purchase *purchase = items->list[i].purchase;

		for (int j = 0; purchase && j < purchase->count; j++) {
			const struct pack *pack = purchase->list[j].pack;

			if (pack->kind == PACK_BULK && pack->unit == UNIT_M3 && pack->step <= 0)
				return true;
		}
	}
	return false;
}

static bool matters(const struct report *report, const struct block *block, enum attribute a)
{
	const struct takeoff *takeoff = report->takeoff;
	int64_t subsoil = block_number(takeoff->allow, ALLOW_SUBSOIL);

	switch (attribute_row(a)->subject) {
	case SUBJECT_ANY:
		return true;
	case SUBJECT_NONE:
		return false;
	case SUBJECT_RAISED:
		return block_number(block, BED_BUILD) == BUILD_RAISED;
	case SUBJECT_LEVEL:
		return block_number(block, BED_BUILD) != BUILD_RAISED;
	case SUBJECT_LOAM:
		return subsoil == SUBSOIL_LOAM;
	case SUBJECT_CLAY:
		return subsoil == SUBSOIL_CLAY;
	case SUBJECT_SAND:
		return subsoil == SUBSOIL_SAND;
	case SUBJECT_GOODS:
		return has_goods(&takeoff->items, a);
	case SUBJECT_BULK:
		return has_bulk(&takeoff->items);
	default:
		return takeoff_has(takeoff, attribute_row(a)->subject);
	}
}

/* Of an entry for beds that has a cell. */
static struct embed_range embed_in_force(const struct report *report, const struct block *bed)
{
	const struct areas *areas = &report->takeoff->areas;
	int i = 0;

	while (&areas->list[i].entry->block != bed)
		i++;
	return embed_range(&report->takeoff->embeds, areas->list[i].entry);
}

/* Of a block in force, the greatest of its beds' embeds; unset where it differs from bed to bed or
 * lawn to lawn otherwise. */
static struct value value_in_force(const struct report *report, const struct block *block,
	enum attribute a)
{
	const struct plot *plot = &report->takeoff->plot;

	if (a == BED_EMBED)
		return (struct value){ .set = true,
			.as.length = embed_in_force(report, block).most };
	if (a == FENCE_RAILS)
		return (struct value){ .set = true, .as.number = fence_rails(plot, block) };
	if (a == FENCE_DEPTH || a == FENCE_HOLE || a == FENCE_INSET || a == FENCE_GATE_POST)
		return (struct value){ .set = true,
			.as.length = fence_derived(plot, block, a) };
	return *block_value(block, a);
}

static const char *origin_words(const struct report *report, const struct block *own,
	enum attribute a)
{
	const char *source = attribute_source(a, report->units);
	const char *from = source ? source : attribute_derived(a, report->units);
	const struct book *book = report->takeoff->book;

	if (block_value(own, a)->set)
		return "";
	if (own->kind == BLOCK_ALLOW && book && block_value(&book->allow, a)->set)
		return "price book";
	return say(report, "%s%s%s", source ? "default" : "default *", from ? ": " : "",
		from ? from : "");
}

/* own: as the plot has it; block: as it is in force. */
static void block_print(const struct report *report, const char *heading,
	const struct block *own, const struct block *block)
{
	static const struct table_column columns[] = {
		{ NULL, COLUMN_LEFT }, { NULL, COLUMN_WRAPS }, { NULL, COLUMN_WRAPS },
	};
	struct hand_table table = hand_table(columns, 3, 2);

	print_blank(report);
	print_lines(report, 0, 2, "%s", heading);
	for (size_t i = 0; i < own->notes.count; i++)
		TABLE_ROW(&table, "Note", own->notes.texts[i], "");
	for (enum attribute a = block_first(block->kind); a <= block_last(block->kind); a++) {
		struct text words = TEXT_EMPTY;
		struct value value;

		if (!matters(report, block, a))
			continue;
		value = value_in_force(report, block, a);
		if (a == BED_EMBED && embed_in_force(report, block).least < value.as.length)
			text_add(&words, "up to ");
		if (value.set)
			value_write(&words, &attribute_row(a)->rule, &value, report->units);
		else
			text_add(&words, "by what is laid");
		TABLE_ROW(&table, attribute_row(a)->label, say_text(report, &words),
			origin_words(report, own, a));
	}
	hand_table_print(&table, report->out);
}

static void print_rules(const struct report *report)
{
	print_lines(report, 0, 2, "%s", report->units == UNITS_IMPERIAL ?
		"The block is the size as laid (face plus joint): measure one of yours. A nominal "
		"16 in block that measures 15 5/8 in leaves an 8 ft side 2 1/4 in short." :
		"The block is the size as laid (face plus joint): measure one of yours. A nominal "
		"400 mm block that measures 390 mm leaves a 4 m side 100 mm short.");
	print_lines(report, 0, 2, "Blocks are rectangular and square-ended, without lip or "
		"setback; caps do not overhang.");
	print_lines(report, 0, 2, "Walls stand inside the bed's outline, their outer face on it; "
		"every raised bed has its own wall all round.");
	print_lines(report, 0, 2, "Running bond: joints stand a quarter block or more from those "
		"of the course below (" RUNNING_BOND_SOURCE ").");
	print_lines(report, 0, 2, "A fixture fills its cells at ground level: where it does not, "
		"what lies round it is in no figure.");
	print_lines(report, 0, 2, "Soil is counted by the ground between the walls, and by the "
		"depth really filled: the wall's height less what is left free at the top and the "
		"mulch, and less the embed where the ground inside stays undug, but not over the "
		"base past the wall.");
}

void print_assumed(const struct report *report)
{
	static const char *const words[] = {
		[CLASS_BED] = "Bed", [CLASS_PATH] = "Path", [CLASS_LAWN] = "Lawn",
		[CLASS_FIXTURE] = "Fixture",
	};
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
	print_note(report, "Values with an empty last column are set in the plot. "
		"default *: common practice, no published source; set your own in the plot.");
	block_print(report, "The whole plot", &report->plot->details.allow, takeoff->allow);
	for (int i = 0; i < takeoff->areas.count; i++) {
		const struct area_row *area = &takeoff->areas.list[i];

		if (area->cells > 0 && area->entry)
			block_print(report, say(report, "%s %c, %s", words[area->entry->class],
				area->letter, area->name), &plot_entry(report->plot,
				area->letter)->block, &area->entry->block);
	}
	for (int i = 0; i < takeoff->fences.count; i++) {
		const struct fence *fence = takeoff->fences.list[i].fence;
		size_t at = (size_t)(fence - takeoff->plot.details.fences);

		block_print(report, say(report, "Fence, %s", fence->name),
			&report->plot->details.fences[at].block, &fence->block);
	}
}
