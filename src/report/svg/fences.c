#include "report/svg/fences.h"
#include "base/number.h"
#include "base/stop.h"
#include "report/drawing/fence_lines.h"
#include "report/svg/type.h"

static const nm POST_LEAST = 9 * NM_PER_MM / 10; /* on paper, to be seen */
static const nm ROUND_LINE = NM_PER_MM / 2;

static struct box line_box(struct at a, struct at b)
{
	return box_grown((struct box){ nm_least(a.x, b.x), nm_least(a.y, b.y), nm_most(a.x, b.x),
		nm_most(a.y, b.y) }, ROUND_LINE);
}

static void draw_line(struct page *page, struct spot from, struct spot to)
{
	struct at a = page_spot(page, from), b = page_spot(page, to);

	ink_line(page->report.out, a, b);
	room_take(&page->room, line_box(a, b));
}

static nm post_side(const struct page *page, const struct fencing *fencing, enum post_kind kind)
{
	nm post = kind == POST_GATE ? fencing->gate_post : fencing->post;

	return nm_most(scaled(post, page->layout->scale), POST_LEAST);
}

static void draw_post(struct page *page, const struct fencing *fencing, const struct fence_post *post)
{
	nm side = post_side(page, fencing, post->kind);
	struct box box = box_around(page_spot(page, post->at), side, side);

	ink_box(page->report.out, box);
	room_take(&page->room, box);
}

/* "G1 4 ft" in the gate or beside it, else "G1". */
static void name_gate(struct page *page, int fence, int index)
{
	const struct report *report = &page->report;
	const struct fence_gate *gate = &report->takeoff->fences.list[fence].gates[index];
	struct at a = page_spot(page, gate->from), b = page_spot(page, gate->to);
	struct at middle = { (a.x + b.x) / 2, (a.y + b.y) / 2 };
	struct type type = { .size = TYPE_SMALL, .is_upright = a.x == b.x, .is_bold = true };
	char name[FENCE_NAME_MOST];

	fence_gate_name(fence, index, name);
	if (!page_try_beside(page, say(report, "%s %s", name, plain_inches(report, gate->clear)),
		middle, 2 * ROUND_LINE, type) &&
	    !page_try_beside(page, name, middle, 2 * ROUND_LINE, type))
		page->left_out[LEFT_GATES]++;
}

static void draw_fence(struct page *page, int fence)
{
	const struct fencing *fencing = &page->report.takeoff->fences.list[fence];

	page_pen(page, PEN_FENCE);
	for (int i = 0; i < fencing->leg_count && !stop_asked(); i++)
		draw_line(page, fencing->legs[i].from, fencing->legs[i].to);
	page_lift(page);
	page_pen(page, PEN_GATE);
	for (int i = 0; i < fencing->gate_count && !stop_asked(); i++)
		draw_line(page, fencing->gates[i].from, fencing->gates[i].to);
	page_lift(page);
	page_pen(page, PEN_POST);
	for (int i = 0; i < fencing->post_count && !stop_asked(); i++)
		draw_post(page, fencing, &fencing->posts[i]);
	page_lift(page);
}

void fences_draw(struct page *page)
{
	for (int i = 0; i < page->report.takeoff->fences.count && !stop_asked(); i++)
		draw_fence(page, i);
}

void fences_name_gates(struct page *page)
{
	const struct fences *fences = &page->report.takeoff->fences;

	page_pen(page, PEN_WORDS);
	for (int f = 0; f < fences->count; f++)
		for (int i = 0; i < fences->list[f].gate_count && !stop_asked(); i++) {
			name_gate(page, f, i);
			arena_clear(page->report.words);
		}
	page_lift(page);
}

void fences_number(struct page *page)
{
	const struct fences *fences = &page->report.takeoff->fences;
	char name[FENCE_NAME_MOST];

	page_pen(page, PEN_WORDS);
	for (int f = 0; f < fences->count; f++)
		for (int i = 0; i < fences->list[f].post_count && !stop_asked(); i++) {
			const struct fence_post *post = &fences->list[f].posts[i];
			nm off = post_side(page, &fences->list[f], post->kind) / 2;

			fence_post_name(f, i, name);
			page->left_out[LEFT_POSTS] += !page_try_beside(page, name,
				page_spot(page, post->at), off + ROUND_LINE,
				(struct type){ .size = TYPE_LEAST });
		}
	page_lift(page);
}
