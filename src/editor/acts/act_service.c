#include "plot/edit/route_beside.h"
#include "base/memory.h"
#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"
#include "editor/cards/service_card.h"

#include <stdlib.h>

enum { WAY_MOST = BENDS_MOST + 2, SIDES_MOST = 4 };

/* Cells from the peg, by its bends, as far as the cursor, as route_beside wants them. */
struct way {
	struct place cells[WAY_MOST];
	int count;
	bool is_level, is_upright; /* it has such a piece */
};

/* Each piece goes on where the one before ends, straight level or upright. */
static struct way way_of(const struct editor *editor)
{
	struct way way = { .cells = { editor->peg }, .count = 1 };

	for (int i = 0; i <= editor->bend_count; i++) {
		struct place to = i < editor->bend_count ? editor->bends[i] : editor->cursor;
		struct place from = way.cells[way.count - 1];
		bool is_level = abs(to.x - from.x) >= abs(to.y - from.y);

		to = is_level ? (struct place){ to.x, from.y } : (struct place){ from.x, to.y };
		if (place_equal(from, to))
			continue;
		way.is_level = way.is_level || is_level;
		way.is_upright = way.is_upright || !is_level;
		way.cells[way.count++] = to;
	}
	return way;
}

static int64_t length_of(const struct route *route)
{
	struct legs legs = LEGS_EMPTY;
	int64_t length;

	route_legs(route, &legs);
	length = legs_length(&legs);
	legs_fini(&legs);
	return length;
}

/* ---- Along which side ------------------------------------------------------------------------ */

struct side_meant {
	const char *words;
	struct beside beside;
};

/* Those that a way has; returns how many. */
static int sides_of(const struct way *way, struct side_meant sides[SIDES_MOST])
{
	static const struct side_meant level[] = {
		{ "Above", { .is_level = true } },
		{ "Below", { .is_below = true, .is_level = true } },
	};
	static const struct side_meant upright[] = {
		{ "Left", { .is_below = false } }, { "Right", { .is_right = true } },
	};
	static const struct side_meant bent[] = {
		{ "Above and left", { .is_below = false } },
		{ "Above and right", { .is_right = true } },
		{ "Below and left", { .is_below = true } },
		{ "Below and right", { .is_below = true, .is_right = true } },
	};
	int count = 0;

	for (int i = 0; i < SIDES_MOST && way->is_level && way->is_upright; i++)
		sides[count++] = bent[i];
	for (int i = 0; i < 2 && !way->is_upright; i++)
		sides[count++] = level[i];
	for (int i = 0; i < 2 && !way->is_level; i++)
		sides[count++] = upright[i];
	return count;
}

/* False where the question was left; else the route is the caller's. */
static bool route_ask(struct editor *editor, struct route *route)
{
	struct way way = way_of(editor);
	struct side_meant sides[SIDES_MOST];
	const char *answers[SIDES_MOST], *notes[SIDES_MOST];
	struct question question = { .text = "Along which side of the cells does it go?",
		.answers = answers, .notes = notes, .count = sides_of(&way, sides) };
	struct report report = editor_report(editor, &editor->words);
	int answer;

	for (int i = 0; i < question.count; i++) {
		struct route tried = { .count = 0 };

		route_beside(&tried, way.cells, way.count, sides[i].beside);
		answers[i] = sides[i].words;
		notes[i] = plain_sides(&report, length_of(&tried));
		route_fini(&tried);
	}
	answer = editor->asker->choose(editor->asker, &question);
	if (answer == ANSWER_NONE)
		return false;
	route_beside(route, way.cells, way.count, sides[answer].beside);
	return true;
}

/* ---- Of which service ------------------------------------------------------------------------ */

/* Adds a service where a new one is meant. False where that was left. */
static bool service_ask(struct editor *editor, int *which)
{
	const struct services *services = &editor->plot->details.around.services;
	const char **answers = arena_new(&editor->words, services->count + 1, sizeof *answers);
	const char **notes = arena_new(&editor->words, services->count + 1, sizeof *notes);
	struct question question = { .text = "A line of which service?", .answers = answers,
		.notes = notes };
	int answer = 0;

	for (size_t i = 0; i < services->count; i++) {
		if ((int)i == editor->service)
			question.first = question.count;
		notes[question.count] = service_words[services->items[i].kind];
		answers[question.count++] = services->items[i].name;
	}
	notes[question.count] = "";
	answers[question.count++] = "A new service";
	if (question.count > 1)
		answer = editor->asker->choose(editor->asker, &question);
	if (answer == ANSWER_NONE)
		return false;
	if (answer == question.count - 1 && !service_card_add(editor))
		return false;
	*which = editor->service = answer;
	return true;
}

static void act_service(struct editor *editor)
{
	struct route route = { .count = 0 };
	const char *key = acts_key(ACT_PEG);
	struct report report = editor_report(editor, &editor->words);
	struct service *service;
	int which;

	if (!editor->is_pegged) {
		editor_say(editor, "Peg where the line begins: %s. Bend it where it turns; where "
			"it ends press %s again and pick this.", key, key);
		return;
	}
	if (!route_ask(editor, &route))
		return;
	if (!service_ask(editor, &which)) {
		route_fini(&route);
		return;
	}
	service = &editor_edit(editor)->details.around.services.items[which];
	*routes_add(&service->routes) = route;
	editor->is_pegged = false;
	editor_say(editor, "%s: a line of %s", service->name,
		plain_sides(&report, length_of(&route)));
	act_around_end(editor);
}

static const struct act acts[] = {
	{ .id = ACT_SERVICE, .key_name = "Enter twice", .name = "Lay a service line",
		.wish = "lay a pipe or a cable",
		.words = "service gas water power drain electric telecom wire hose main sewer "
			"utility irrigation underground supply",
		.writes = true, .run = act_service },
};
const struct act_group acts_of_services = ACT_GROUP("Around", acts);
