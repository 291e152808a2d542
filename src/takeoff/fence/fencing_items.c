#include "takeoff/fence/fencing.h"
#include "takeoff/common/item_rows.h"
#include "base/show.h"

#include <math.h>
#include <string.h>

/* Sums may end a hair above a whole number of bags; no bag is bought for that. */
static const double HAIR = 1e-9;

/* Bags beside those that the holes take: holes come out wider than drawn. */
enum { BAGS_SPARE = 1 };

struct fence_items {
	struct items *items;
	const struct takeoff *takeoff;
	enum units units;
	size_t first; /* of the rows of fences */
};

static struct item *add_each(const struct fence_items *f, const char *id, const char *label,
	double count, const char *note)
{
	return item_add(f->items, &(struct item){ .id = id, .section = SECTION_FENCE, .label = label,
		.unit = UNIT_EACH, .laid = count, .order = count, .note = note });
}

/* Adds to the row of that id and note, or a new one. */
static struct item *add_alike(const struct fence_items *f, const char *id, const char *label,
	double count, const char *note)
{
	for (size_t i = f->first; i < f->items->count; i++) {
		struct item *row = &f->items->rows[i];

		if (strcmp(row->id, id) == 0 && strcmp(row->note, note) == 0) {
			row->laid += count;
			row->order += count;
			return row;
		}
	}
	return add_each(f, id, label, count, note);
}

static const char *shown(const struct fence_items *f, nm length,
	void (*show)(struct text *, nm, enum units))
{
	struct text words = TEXT_EMPTY;
	const char *kept;

	show(&words, length, f->units);
	kept = arena_print(f->items->arena, "%s", words.bytes);
	text_fini(&words);
	return kept;
}

/* "Pickets: 38 3/8 in wide, 36 in high". */
static const char *size_note(const struct fence_items *f, const struct fencing *fencing, nm width)
{
	return arena_print(f->items->arena, "%s: %s wide, %s high", fencing->fence->name,
		shown(f, width, show_inches),
		shown(f, block_length(&fencing->fence->block, FENCE_HEIGHT), show_inches));
}

static void add_posts(const struct fence_items *f, const struct fencing *fencing)
{
	if (fencing->post_count > 0)
		add_alike(f, "fence.post", "Fence post", fencing->post_count,
			arena_print(f->items->arena, "%s long, %s square",
				shown(f, fencing->post_stock, show_length),
				shown(f, block_length(&fencing->fence->block, FENCE_POST),
					show_inches)))->length = fencing->post_stock;
}

static void add_panels(const struct fence_items *f, const struct fencing *fencing)
{
	int64_t bought = fencing->panels_whole + fencing->panels_cut;
	const char *size = size_note(f, fencing, fencing->panel);

	if (bought > 0)
		add_each(f, "fence.panel", "Fence panel", (double)bought, fencing->panels_cut == 0 ?
			size : arena_print(f->items->arena, "%s; %lld of them cut up", size,
				(long long)fencing->panels_cut))->length =
			block_length(&fencing->fence->block, FENCE_SECTION);
}

/* Leaves made of offcuts are not bought. */
static void add_gates(const struct fence_items *f, const struct fencing *fencing)
{
	for (int i = 0; i < fencing->leaves_count; i++) {
		const struct fence_leaves *leaves = &fencing->leaves[i];
		const char *size = size_note(f, fencing, leaves->width);

		if (leaves->count > leaves->from_offcuts)
			add_each(f, "fence.gate", "Gate leaf",
				(double)(leaves->count - leaves->from_offcuts),
				leaves->from_offcuts == 0 ? size : arena_print(f->items->arena,
					"%s; %lld more from offcuts", size,
					(long long)leaves->from_offcuts))->length = leaves->width;
	}
}

static void add_concrete(const struct fence_items *f)
{
	struct text yield = TEXT_EMPTY;
	double bags = 0;

	for (int i = 0; i < f->takeoff->fencing_count; i++)
		bags += f->takeoff->fencings[i].post_count * f->takeoff->fencings[i].hole.bags;
	if (bags <= 0)
		return;
	amount_write(&yield, &block_effective(f->takeoff->allow, ALLOW_CONCRETE_BAG)->as.amount);
	item_add(f->items, &(struct item){ .id = "fence.concrete", .section = SECTION_FENCE,
		.label = "Concrete, bags", .unit = UNIT_EACH, .laid = bags, .spare = BAGS_SPARE,
		.order = ceil(bags + BAGS_SPARE - HAIR), .note = arena_print(f->items->arena,
			"whole; %s each when mixed", yield.bytes) });
	text_fini(&yield);
}

static void add_gravel(const struct fence_items *f)
{
	double gravel = 0;

	for (int i = 0; i < f->takeoff->fencing_count; i++)
		gravel += f->takeoff->fencings[i].post_count * f->takeoff->fencings[i].hole.gravel;
	if (gravel > 0)
		item_add(f->items, &(struct item){ .id = "fence.gravel", .section = SECTION_FENCE,
			.label = "Gravel under posts", .unit = UNIT_M3, .laid = gravel,
			.order = gravel });
}

static void add_fixings(const struct fence_items *f)
{
	static const struct { const char *id, *label, *note; } rows[] = {
		{ "fence.bracket", "Rail bracket", "2 to a rail of a panel" },
		{ "fence.hinge", "Gate hinge", "2 to a leaf" },
		{ "fence.latch", "Gate latch", "1 to a gate" },
		{ "fence.bolt", "Drop bolt", "1 to a gate of two leaves" },
	};
	int64_t counts[sizeof rows / sizeof *rows] = { 0 };

	for (int i = 0; i < f->takeoff->fencing_count; i++) {
		const struct fencing *fencing = &f->takeoff->fencings[i];
		const int64_t own[] = { fencing->brackets, fencing->hinges, fencing->latches,
			fencing->bolts };

		for (size_t j = 0; j < sizeof rows / sizeof *rows; j++)
			counts[j] += own[j];
	}
	for (size_t j = 0; j < sizeof rows / sizeof *rows; j++)
		if (counts[j] > 0)
			add_each(f, rows[j].id, rows[j].label, (double)counts[j], rows[j].note);
}

void fencing_items(struct items *items, const struct takeoff *takeoff, const struct plot *plot)
{
	const struct fence_items f = { items, takeoff, plot_units(plot), items->count };

	for (int i = 0; i < takeoff->fencing_count; i++)
		add_posts(&f, &takeoff->fencings[i]);
	for (int i = 0; i < takeoff->fencing_count; i++)
		add_panels(&f, &takeoff->fencings[i]);
	for (int i = 0; i < takeoff->fencing_count; i++)
		add_gates(&f, &takeoff->fencings[i]);
	add_concrete(&f);
	add_gravel(&f);
	add_fixings(&f);
}
