#include "report/svg/fence_marks.h"
#include "base/number.h"
#include "base/stop.h"
#include "report/drawing/fence_lines.h"
#include "report/svg/type.h"

static const nm POST_LEAST = 9 * NM_PER_MM / 10; /* on paper, to be seen */

static void draw_line(struct sheet *sheet, struct spot from, struct spot to)
{
	sheet_line(sheet, sheet_spot(sheet, from), sheet_spot(sheet, to));
}

static nm post_side(const struct sheet *sheet, const struct fencing *fencing, enum post_kind kind)
{
	nm post = kind == POST_GATE ? fencing->gate_post : fencing->post;

	return nm_most(scaled(post, sheet->layout->scale), POST_LEAST);
}

static void draw_post(struct sheet *sheet, const struct fencing *fencing,
	const struct fence_post *post)
{
	nm side = post_side(sheet, fencing, post->kind);
	struct box box = box_around(sheet_spot(sheet, post->at), side, side);

	ink_box(sheet->report.out, box);
	room_take(&sheet->room, box);
}

/* Beside the middle of the gate, on either side; else anywhere near it. */
static bool try_gate(struct sheet *sheet, const char *words, struct at middle, struct type type)
{
	nm off = type_high(type.size) / 2 + 2 * ROUND_LINE;
	struct at by = { type.is_upright ? off : 0, type.is_upright ? 0 : off };

	return sheet_try(sheet, words, (struct at){ middle.x - by.x, middle.y - by.y }, type) ||
		sheet_try(sheet, words, (struct at){ middle.x + by.x, middle.y + by.y }, type) ||
		sheet_try_beside(sheet, words, middle, 2 * ROUND_LINE, type);
}

/* "G1 4 ft", else "G1". */
static void name_gate(struct sheet *sheet, int fence, int index)
{
	const struct report *report = &sheet->report;
	const struct fence_gate *gate = &report->takeoff->fences.list[fence].gates[index];
	struct at a = sheet_spot(sheet, gate->from), b = sheet_spot(sheet, gate->to);
	struct at middle = { (a.x + b.x) / 2, (a.y + b.y) / 2 };
	struct type type = { .size = TYPE_SMALL, .is_upright = a.x == b.x, .is_bold = true };
	char name[FENCE_NAME_MOST];

	fence_gate_name(fence, index, name);
	if (!try_gate(sheet, say(report, "%s %s", name, plain_inches(report, gate->clear)), middle,
		type) && !try_gate(sheet, name, middle, type))
		sheet->left_out[LEFT_GATES]++;
}

static void draw_fence(struct sheet *sheet, int fence)
{
	const struct fencing *fencing = &sheet->report.takeoff->fences.list[fence];

	sheet_pen(sheet, PEN_FENCE);
	for (int i = 0; i < fencing->leg_count && !stop_asked(); i++)
		draw_line(sheet, fencing->legs[i].from, fencing->legs[i].to);
	sheet_lift(sheet);
	sheet_pen(sheet, PEN_GATE);
	for (int i = 0; i < fencing->gate_count && !stop_asked(); i++)
		draw_line(sheet, fencing->gates[i].from, fencing->gates[i].to);
	sheet_lift(sheet);
	sheet_pen(sheet, PEN_POST);
	for (int i = 0; i < fencing->post_count && !stop_asked(); i++)
		draw_post(sheet, fencing, &fencing->posts[i]);
	sheet_lift(sheet);
}

void fence_marks_draw(struct sheet *sheet)
{
	for (int i = 0; i < sheet->report.takeoff->fences.count && !stop_asked(); i++)
		draw_fence(sheet, i);
}

void fence_marks_name_gates(struct sheet *sheet)
{
	const struct fences *fences = &sheet->report.takeoff->fences;

	sheet_pen(sheet, PEN_WORDS);
	for (int f = 0; f < fences->count; f++)
		for (int i = 0; i < fences->list[f].gate_count && !stop_asked(); i++) {
			name_gate(sheet, f, i);
			arena_clear(sheet->report.words);
		}
	sheet_lift(sheet);
}

static void number_post(struct sheet *sheet, const struct fencing *fencing,
	const struct fence_post *post, const char *number)
{
	const struct type small = { .size = TYPE_SMALL }, tiny = { .size = TYPE_LEAST };
	nm off = post_side(sheet, fencing, post->kind) / 2 + ROUND_LINE;
	struct at at = sheet_spot(sheet, post->at);

	if (!sheet_try_beside(sheet, number, at, off, small) &&
	    !sheet_try_beside(sheet, number, at, off, tiny))
		sheet->left_out[LEFT_POSTS]++;
}

void fence_marks_number(struct sheet *sheet)
{
	const struct fences *fences = &sheet->report.takeoff->fences;
	char number[FENCE_NAME_MOST];

	sheet_pen(sheet, PEN_WORDS);
	for (int f = 0; f < fences->count; f++)
		for (int i = 0; i < fences->list[f].post_count && !stop_asked(); i++) {
			fence_post_name(f, i, number);
			number_post(sheet, &fences->list[f], &fences->list[f].posts[i], number);
		}
	sheet_lift(sheet);
}
