#include "report/panel/pages.h"
#include "base/show.h"

static void bags(struct page_maker *maker, double bags)
{
	struct text value = TEXT_EMPTY;

	show_decimal(&value, bags, 2);
	pages_figure(maker, "Bags for one", &value);
}

static void fence(struct page_maker *maker, const struct fencing *fencing)
{
	pages_heading(maker, "%s", fencing->fence->name);
	pages_length(maker, "Length", fencing->length);
	pages_count(maker, "Posts", fencing->post_count);
	pages_length(maker, "Post, needed", fencing->post_length);
	pages_count(maker, "Panels whole", fencing->panels_whole);
	pages_count(maker, "Panels narrower", fencing->panel_pieces);
	pages_count(maker, "Panels cut up", fencing->panels_cut);
	for (int i = 0; i < fencing->gate_count; i++) {
		const struct fence_gate *gate = &fencing->gates[i];

		pages_length(maker, arena_print(maker->arena, "Gate %d clear", i + 1),
			gate->clear > 0 ? gate->clear : 0);
	}
	pages_length(maker, "Hole across", fencing->hole.across);
	pages_length(maker, "Hole deep", fencing->hole.depth);
	bags(maker, fencing->hole.bags);
}

void pages_fence(struct page_maker *maker)
{
	const struct takeoff *takeoff = maker->takeoff;

	for (int i = 0; i < takeoff->item_count; i++) {
		if (takeoff->items[i].section != SECTION_FENCE)
			continue;
		if (maker->page->count == 0)
			pages_heading(maker, "To order, all fences");
		pages_item(maker, &takeoff->items[i]);
	}
	for (int i = 0; i < takeoff->fencing_count; i++)
		fence(maker, &takeoff->fencings[i]);
	if (maker->page->count == 0)
		pages_note(maker, "No fence yet.");
}
