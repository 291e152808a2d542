#include "takeoff/setout/marks.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"
#include "takeoff/setout/lines.h"

#include <assert.h>
#include <stdlib.h>

struct spot mark_post(const struct setout *setout, struct setout_mark post)
{
	return setout->fences->list[post.fence].posts[post.index].at;
}

struct spot mark_gate(const struct setout *setout, struct setout_mark gate, struct spot *to)
{
	const struct fence_gate *found = &setout->fences->list[gate.fence].gates[gate.index];
	bool is_forward = found->from.x + found->from.y <= found->to.x + found->to.y;

	*to = is_forward ? found->to : found->from;
	return is_forward ? found->from : found->to;
}

/* Posts, or gates, by the string they are on. */
struct marks {
	const struct setout *setout;
	const struct line_index *index;
	struct setout_mark *list; /* string after string */
	int *at;                  /* by string: where its next one goes; its first one's place */
	bool are_gates;
};

static int fence_marks(const struct marks *marks, int fence)
{
	const struct fencing *fencing = &marks->setout->fences->list[fence];

	return marks->are_gates ? fencing->gate_count : fencing->post_count;
}

static int string_of(const struct marks *marks, struct setout_mark mark)
{
	const struct fencing *fencing = &marks->setout->fences->list[mark.fence];
	struct spot at;
	int string;

	if (marks->are_gates) {
		const struct fence_gate *gate = &fencing->gates[mark.index];
		bool is_upright = heading_is_upright(gate->heading);

		return line_index_find(marks->index, is_upright,
			is_upright ? gate->from.x : gate->from.y);
	}
	at = fencing->posts[mark.index].at;
	string = line_index_find(marks->index, false, at.y);
	return string != NO_STRING ? string : line_index_find(marks->index, true, at.x);
}

/* Does it with each mark. */
static void each(struct marks *marks, void (*put)(struct marks *, int string, struct setout_mark))
{
	for (int f = 0; f < marks->setout->fences->count; f++)
		for (int i = 0; i < fence_marks(marks, f) && !stop_asked(); i++) {
			struct setout_mark mark = { f, i };
			int string = string_of(marks, mark);

			assert(string != NO_STRING); /* legs and gates have strings */
			put(marks, string, mark);
		}
}

/* Of a mark on the next string: so all counts stand one place on. */
static void count(struct marks *marks, int string, struct setout_mark mark)
{
	(void)mark;
	marks->at[string + 1]++;
}

static void place(struct marks *marks, int string, struct setout_mark mark)
{
	marks->list[marks->at[string]++] = mark;
}

/* A mark by how far along its string it is. */
struct placed {
	nm along;
	struct setout_mark mark;
};

static int compare_placed(const void *one, const void *other)
{
	const struct placed *a = one, *b = other;

	if (a->along != b->along)
		return compare(a->along, b->along);
	return a->mark.fence != b->mark.fence ? compare(a->mark.fence, b->mark.fence) :
		compare(a->mark.index, b->mark.index);
}

static void order(const struct marks *marks, const struct setout_string *string,
	struct setout_mark *list, int marks_count)
{
	struct placed *placed = memory_new((size_t)marks_count, sizeof *placed);

	for (int i = 0; i < marks_count; i++) {
		struct spot to, at = marks->are_gates ?
			mark_gate(marks->setout, list[i], &to) : mark_post(marks->setout, list[i]);

		placed[i] = (struct placed){ string->is_upright ? at.y : at.x, list[i] };
	}
	sort(placed, (size_t)marks_count, sizeof *placed, compare_placed);
	for (int i = 0; i < marks_count; i++)
		list[i] = placed[i].mark;
	free(placed);
}

/* Returns how many there are. */
static int find(struct marks *marks, struct setout_string *strings, struct arena *arena)
{
	int string_count = marks->setout->string_count, all;

	marks->at = memory_new((size_t)string_count + 1, sizeof *marks->at);
	each(marks, count);
	for (int i = 0; i < string_count; i++)
		marks->at[i + 1] += marks->at[i];
	all = marks->at[string_count];
	marks->list = arena_new(arena, (size_t)all, sizeof *marks->list);
	each(marks, place);
	/* Each now is where the next one's marks begin. */
	for (int i = 0, from = 0; i < string_count && !stop_asked(); from = marks->at[i++]) {
		int own = marks->at[i] - from;

		order(marks, &strings[i], marks->list + from, own);
		if (marks->are_gates) {
			strings[i].gates = marks->list + from;
			strings[i].gate_count = own;
		} else {
			strings[i].posts = marks->list + from;
			strings[i].post_count = own;
		}
	}
	free(marks->at);
	return all;
}

void marks_find(struct setout *setout, struct setout_string *strings, struct arena *arena)
{
	struct line_index index = line_index_of(setout);
	struct marks posts = { .setout = setout, .index = &index };
	struct marks gates = { .setout = setout, .index = &index, .are_gates = true };

	setout->post_count = find(&posts, strings, arena);
	setout->gate_count = find(&gates, strings, arena);
	line_index_fini(&index);
}
