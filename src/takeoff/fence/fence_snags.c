#include "takeoff/fence/fence_snags.h"
#include "base/number.h"
#include "base/stop.h"
#include "plot/mirror.h"
#include "survey/way.h"

/* The cells of the plan that have a part of the leg as a side. */
static struct rectangle beside(const struct survey *survey, struct leg leg)
{
	struct leg f = leg_forward(leg);
	struct rectangle r = { f.from.x, f.from.y, f.to.x - 1, f.to.y - 1 };

	if (leg_is_upright(leg)) {
		r.left = most(f.from.x - 1, 0);
		r.right = least(f.from.x, survey->columns - 1);
	} else {
		r.top = most(f.from.y - 1, 0);
		r.bottom = least(f.from.y, survey->rows - 1);
	}
	return r;
}

struct snag *fence_warn_at(const struct basis *basis, enum snag_code code, struct leg on,
	const nm figures[static SNAG_FIGURES])
{
	struct rectangle cells = beside(basis->survey, on);
	struct snag *snag = snag_add(basis->snags, code, NO_REGION, figures);

	snag_put_around(snag, (struct place){ cells.left, cells.top }, cells);
	return snag;
}

/* ---- Posts and panels ------------------------------------------------------------------------ */

static void warn_tight(const struct basis *basis, struct leg on, bool is_gate, nm length)
{
	fence_warn_at(basis, SNAG_FENCE_TIGHT, on, SNAG_FIGURES_OF(length))->kind = is_gate;
}

static void warn_legs(const struct basis *basis, const struct fencing *fencing)
{
	for (int i = 0; i < fencing->leg_count && !stop_asked(); i++) {
		const struct fence_leg *leg = &fencing->legs[i];

		if (leg->whole + leg->cut_count == 0)
			warn_tight(basis, leg->on, false, leg->length);
	}
}

static void warn_whole(const struct basis *basis, const struct fencing *fencing)
{
	const struct place *first = fencing->fence->runs[0].points;
	const struct leg on = { first[0], first[1] };
	nm post = fencing->post, hole = fencing->hole.across, height = fencing->height;
	nm high = block_length(basis->allow, ALLOW_FENCE_HIGH);

	if ((double)hole * (double)hole < 2 * (double)post * (double)post)
		fence_warn_at(basis, SNAG_FENCE_HOLE, on, SNAG_FIGURES_OF(hole, post));
	if (height > high)
		fence_warn_at(basis, SNAG_FENCE_HIGH, on, SNAG_FIGURES_OF(height, high));
}

/* ---- Gates ----------------------------------------------------------------------------------- */

static enum plot_class class_at(const struct survey *survey, int x, int y)
{
	return (enum plot_class)survey->runs[survey_run_at(survey, x, y)].class;
}

/* How far into the plan a gate on its boundary stands, 0 for others: by its posts, which the
 * fence's inset moves. */
static nm gate_inset(const struct basis *basis, const struct fence_gate *gate)
{
	nm cell = basis->survey->cell;
	struct spot spot = gate->from;
	nm off = leg_is_upright(gate->on) ? spot.x - gate->on.from.x * cell :
		spot.y - gate->on.from.y * cell;

	return off < 0 ? -off : off;
}

/* The cells in front of the gate, on both sides, of which a part is nearer than `far`. */
static struct rectangle front(const struct basis *basis, const struct fence_gate *gate, nm far)
{
	const struct survey *survey = basis->survey;
	struct rectangle r = beside(survey, gate->on);
	int deep = (int)quotient_up(far + gate_inset(basis, gate), survey->cell) - 1;

	if (leg_is_upright(gate->on)) {
		r.left = most(r.left - deep, 0);
		r.right = least(r.right + deep, survey->columns - 1);
	} else {
		r.top = most(r.top - deep, 0);
		r.bottom = least(r.bottom + deep, survey->rows - 1);
	}
	return r;
}

/* The first of these cells that nobody can stand on. */
static bool find_blocked(const struct survey *survey, struct rectangle cells, struct place *blocked)
{
	for (int y = cells.top; y <= cells.bottom && !stop_asked(); y++)
		for (int x = cells.left; x <= cells.right; x++)
			if (!way_is_over(class_at(survey, x, y))) {
				*blocked = (struct place){ x, y };
				return true;
			}
	return false;
}

static void warn_gates(const struct basis *basis, const struct fencing *fencing)
{
	nm least_clear = block_length(basis->allow, ALLOW_GATE_CLEAR);
	nm far = block_length(basis->allow, ALLOW_BARROW_CLEAR);

	for (int i = 0; i < fencing->gate_count && !stop_asked(); i++) {
		const struct fence_gate *gate = &fencing->gates[i];
		struct place at;

		if (gate->leaves == 0)
			warn_tight(basis, gate->on, true, gate->length);
		else if (gate->clear < least_clear)
			fence_warn_at(basis, SNAG_GATE_NARROW, gate->on,
				SNAG_FIGURES_OF(gate->clear, least_clear));
		if (find_blocked(basis->survey, front(basis, gate, far), &at))
			snag_put_around(snag_add(basis->snags, SNAG_GATE_BLOCKED,
				survey_region_at(basis->survey, at.x, at.y),
				SNAG_FIGURES_OF(far)), at, beside(basis->survey, gate->on));
	}
}

/* ---- Paths ----------------------------------------------------------------------------------- */

/* Whether there is path on both sides of the side of a cell that begins at a point. */
static bool is_on_path(const struct survey *survey, struct place from, bool is_upright)
{
	int x = from.x - is_upright, y = from.y - !is_upright;

	return x >= 0 && y >= 0 && from.x < survey->columns && from.y < survey->rows &&
		class_at(survey, x, y) == CLASS_PATH &&
		class_at(survey, from.x, from.y) == CLASS_PATH;
}

/* Adds what of the leg has path on both sides. */
static void add_crossings(struct legs *crossings, const struct survey *survey, struct leg leg)
{
	bool is_upright = leg_is_upright(leg), was_on_path = false;
	struct leg f = leg_forward(leg);

	for (struct place at = f.from; !place_equal(at, f.to) && !stop_asked();) {
		struct place next = { at.x + !is_upright, at.y + is_upright };
		bool is_path = is_on_path(survey, at, is_upright);

		if (is_path && was_on_path)
			crossings->items[crossings->count - 1].to = next;
		else if (is_path)
			legs_add(crossings, (struct leg){ at, next });
		was_on_path = is_path;
		at = next;
	}
}

/* Whether all of leg a comes before leg b, in the order of legs_sort. */
static bool is_before(struct leg a, struct leg b)
{
	struct stretch one = leg_stretch(a), other = leg_stretch(b);

	if (one.is_upright == other.is_upright && one.line == other.line)
		return one.high <= other.low;
	return stretch_compare(&one, &other) < 0;
}

/* A path is crossed by legs and gates that go on straight; one gate among them will do. */
static void warn_paths(const struct basis *basis, const struct fencing *fencing)
{
	struct legs crossings = LEGS_EMPTY, gates = LEGS_EMPTY;
	size_t gate = 0;

	for (int i = 0; i < fencing->leg_count && !stop_asked(); i++)
		add_crossings(&crossings, basis->survey, fencing->legs[i].on);
	for (int i = 0; i < fencing->gate_count && !stop_asked(); i++) {
		add_crossings(&crossings, basis->survey, fencing->gates[i].on);
		legs_add(&gates, fencing->gates[i].on);
	}
	legs_join(&crossings);
	legs_sort(&gates);
	for (size_t i = 0; i < crossings.count && !stop_asked(); i++) {
		struct leg across = crossings.items[i];
		struct rectangle cells = beside(basis->survey, across);

		while (gate < gates.count && is_before(gates.items[gate], across))
			gate++;
		if (gate < gates.count && leg_overlap(gates.items[gate], across))
			continue;
		fence_warn_at(basis, SNAG_FENCE_PATH, across, SNAG_FIGURES_OF(leg_length(across) *
			basis->survey->cell))->region = survey_region_at(basis->survey, cells.left,
			cells.top);
	}
	legs_fini(&crossings);
	legs_fini(&gates);
}

/* ---- The whole ------------------------------------------------------------------------------- */

void fence_warn(const struct basis *basis, const struct fencing *fencing)
{
	warn_legs(basis, fencing);
	warn_gates(basis, fencing);
	warn_whole(basis, fencing);
	warn_paths(basis, fencing);
}
