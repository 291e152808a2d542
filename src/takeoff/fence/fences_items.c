#include "takeoff/fence/fences.h"
#include "base/measure.h"

/* Bags besides those for the holes: holes come out wider than drawn. */
enum { BAGS_SPARE = 1 };

/* Equal posts of all fences make one row. */
static void add_posts(struct item_list *items, const struct post_stock *stock, nm across,
	size_t first)
{
	struct item posts = { .good = GOOD_FENCE_POST, .section = SECTION_FENCE,
		.length = stock->length, .across = across, .laid = stock->count,
		.order = stock->count };

	for (size_t i = first; i < items->count; i++) {
		struct item *row = &items->list[i];

		if (row->length == posts.length && row->across == posts.across) {
			row->laid += posts.laid;
			row->order += posts.order;
			return;
		}
	}
	item_add(items, &posts);
}

static void add_all_posts(struct item_list *items, const struct fencing *fencing, size_t first)
{
	for (int i = 0; i < fencing->stock_count; i++) {
		const struct post_stock *stock = &fencing->stocks[i];

		add_posts(items, stock, stock->is_of_gates ? fencing->gate_post : fencing->post,
			first);
	}
}

static void add_panels(struct item_list *items, const struct fencing *fencing)
{
	if (fencing->panels_bought > 0)
		item_add(items, &(struct item){ .good = GOOD_FENCE_PANEL, .section = SECTION_FENCE,
			.length = fencing->section, .height = fencing->height,
			.laid = (double)fencing->panels_bought,
			.order = (double)fencing->panels_bought,
			.note = { .kind = NOTE_PANEL, .name = fencing->name,
				.lengths = { fencing->panel, fencing->section },
				.count = fencing->panels_cut } });
}

/* Leaves made of offcuts are not bought. */
static void add_gates(struct item_list *items, const struct fencing *fencing)
{
	for (int i = 0; i < fencing->leaves_count; i++) {
		const struct fence_leaves *leaves = &fencing->leaves[i];
		double bought = (double)(leaves->count - leaves->from_offcuts);

		if (bought > 0)
			item_add(items, &(struct item){ .good = GOOD_FENCE_GATE,
				.section = SECTION_FENCE, .length = leaves->width,
				.height = fencing->height, .laid = bought, .order = bought,
				.note = { .kind = NOTE_LEAF, .name = fencing->name,
					.count = leaves->from_offcuts } });
	}
}

static void add_concrete(struct item_list *items, double bags)
{
	if (bags > 0)
		item_add(items, &(struct item){ .good = GOOD_FENCE_CONCRETE,
			.section = SECTION_FENCE, .laid = bags, .spare = BAGS_SPARE,
			.order = whole(bags + BAGS_SPARE),
			.note = { .kind = NOTE_CONCRETE,
				.amount = block_effective(items->allow,
				ALLOW_CONCRETE_BAG)->as.amount } });
}

static void add_fixing(struct item_list *items, enum good good, int64_t count, enum note_kind note)
{
	if (count > 0)
		item_add(items, &(struct item){ .good = good, .section = SECTION_FENCE,
			.laid = (double)count, .order = (double)count, .note.kind = note });
}

static void add_fillings_and_fixings(struct item_list *items, const struct fences *fences)
{
	double bags = 0, gravel = 0;
	int64_t brackets = 0, hinges = 0, latches = 0, bolts = 0;

	for (int i = 0; i < fences->count; i++) {
		const struct fencing *fencing = &fences->list[i];

		bags += fencing->concrete_bags;
		gravel += fencing->gravel;
		brackets += fencing->brackets;
		hinges += fencing->hinges;
		latches += fencing->latches;
		bolts += fencing->bolts;
	}
	add_concrete(items, bags);
	item_add_bare(items, GOOD_FENCE_GRAVEL, SECTION_FENCE, gravel);
	add_fixing(items, GOOD_FENCE_BRACKET, brackets, NOTE_BRACKET);
	add_fixing(items, GOOD_FENCE_HINGE, hinges, NOTE_HINGE);
	add_fixing(items, GOOD_FENCE_LATCH, latches, NOTE_LATCH);
	add_fixing(items, GOOD_FENCE_BOLT, bolts, NOTE_BOLT);
}

void fences_items(struct item_list *items, const struct fences *fences)
{
	size_t first = items->count;

	for (int i = 0; i < fences->count; i++)
		add_all_posts(items, &fences->list[i], first);
	for (int i = 0; i < fences->count; i++)
		add_panels(items, &fences->list[i]);
	for (int i = 0; i < fences->count; i++)
		add_gates(items, &fences->list[i]);
	add_fillings_and_fixings(items, fences);
}
