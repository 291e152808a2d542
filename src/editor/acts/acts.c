#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"

#include <assert.h>

const struct act_group *const act_groups[ACT_GROUPS] = {
	&acts_of_moving, &acts_of_view, &acts_of_laying, &acts_of_peg, &acts_of_runs,
	&acts_of_round, &acts_of_end, &acts_of_mark, &acts_of_letters, &acts_of_fence,
	&acts_of_services, &acts_of_levels, &acts_of_around, &acts_of_sun,
	&acts_of_plants, &acts_of_mirror, &acts_of_axis, &acts_of_page, &acts_of_snags,
	&acts_of_cards, &acts_of_size, &acts_of_strips, &acts_of_names, &acts_of_file,
	&acts_of_drawing, &acts_of_price, &acts_of_save_as, &acts_of_program, &acts_of_list,
};

static bool has_key(const struct act *act, int key)
{
	for (int i = 0; i < KEY_RANGES_MOST; i++)
		if (act->keys[i].first != PRESS_NOTHING && key >= act->keys[i].first &&
		    key <= act->keys[i].last)
			return true;
	return false;
}

const struct act *acts_get(enum act_id id)
{
	for (int i = 0; i < ACT_GROUPS; i++)
		for (int j = 0; j < act_groups[i]->count; j++)
			if (act_groups[i]->acts[j].id == id)
				return &act_groups[i]->acts[j];
	assert(false); /* each act has its row */
	return NULL;
}

const struct act *acts_find(int key)
{
	for (int i = 0; i < ACT_GROUPS; i++)
		for (int j = 0; j < act_groups[i]->count; j++)
			if (has_key(&act_groups[i]->acts[j], key))
				return &act_groups[i]->acts[j];
	return NULL;
}

const char *acts_key(enum act_id id)
{
	const struct act *act = acts_get(id);

	return act->key_said ? act->key_said : act->key_name;
}

const char *act_another_session(struct editor *editor, long holder)
{
	if (!holder)
		return "another session";
	return arena_print(&editor->words, "another session (process %ld)", holder);
}

static const char *why_looking(struct editor *editor)
{
	struct store *store = &editor->store;

	if (store->access != STORE_LOOKS)
		return "rescued work waits to be taken up at the next start";
	if (!store_is_held(store))
		return "another session was drawing this plot and has left; start again to draw";
	return arena_print(&editor->words, "%s is drawing this plot",
		act_another_session(editor, store->lock.holder));
}

/* Why nothing may be changed, and what can be done all the same. */
static void say_looking(struct editor *editor)
{
	editor_say(editor, "Looking only: %s. %s %s makes a plot of your own of it.",
		why_looking(editor), acts_key(ACT_SAVE_AS), acts_get(ACT_SAVE_AS)->name);
}

/* "Fill (p Crushed stone)". */
void acts_name_step(struct editor *editor, enum act_id id)
{
	const struct act *act = acts_get(id);
	struct arena words = ARENA_EMPTY;
	struct report report = editor_report(editor, &words);

	text_clear(&editor->doing);
	text_add(&editor->doing, act->name);
	if (act->lays)
		text_print(&editor->doing, " (%s)", plain_letter(&report, editor->hand));
	arena_clear(&words);
}

/* Shapes are of ground: plants are set one by one, or fill a bed. */
static bool is_refused_plant(struct editor *editor, const struct act *act)
{
	bool is_refused = act->lays && !act->plants &&
		plants_find(&editor->plot->details.plants, editor->hand);
	struct report report = editor_report(editor, &editor->words);

	if (is_refused)
		editor_say(editor, "%s is a plant: %s sets one at the cursor, and %s (%s) fills a "
			"bed with it. For this take ground in hand.",
			plain_letter(&report, editor->hand), acts_key(ACT_LAY),
			acts_get(ACT_DRIFT)->name, acts_key(ACT_DRIFT));
	return is_refused;
}

static void run(struct editor *editor, const struct act *act, int key)
{
	if (act->writes && editor->is_looking) {
		say_looking(editor);
		return;
	}
	if (is_refused_plant(editor, act))
		return;
	acts_name_step(editor, act->id);
	if (act->run_by_key)
		act->run_by_key(editor, key);
	else if (act->run)
		act->run(editor);
	else
		act->run_with(editor, act->with);
}

/* act NULL: the key has none. */
static void begin(struct editor *editor, const struct act *act, int key)
{
	text_clear(&editor->message);
	arena_clear(&editor->words);
	editor_end_drag(editor); /* a key ends what the mouse has begun */
	if (!act)
		editor_say(editor, "This key does nothing. Press %s for all that can be done.",
			acts_key(ACT_ALL));
	else
		run(editor, act, key);
	if (!act || act->id != ACT_STEPS)
		editor->steps = 0; /* a number is for the next move only */
}

/* While a number is typed it is what Backspace and Esc take back. */
static const struct act *act_of(const struct editor *editor, int key)
{
	if (editor->steps && (key == PRESS_BACKSPACE || key == PRESS_ESCAPE))
		return acts_get(ACT_STEPS);
	return acts_find(key);
}

void acts_press(struct editor *editor, int key)
{
	begin(editor, act_of(editor, key), key);
}

void acts_do(struct editor *editor, enum act_id id)
{
	begin(editor, acts_get(id), PRESS_NOTHING);
}

void acts_run(struct editor *editor, enum act_id id)
{
	run(editor, acts_get(id), PRESS_NOTHING);
}

void choice_ask(struct editor *editor, const char *text, const struct choice *choices, int count)
{
	const char *answers[CHOICES_MOST], *notes[CHOICES_MOST];
	int keys[CHOICES_MOST];
	struct question question = { .text = text, .answers = answers, .notes = notes,
		.keys = keys, .count = count };
	int answer;

	assert(count <= CHOICES_MOST);
	for (int i = 0; i < count; i++) {
		enum act_id by = choices[i].by;

		answers[i] = choices[i].words;
		notes[i] = by ? acts_key(by) : "";
		/* cppcheck-suppress unreadVariable ; by way of the question */
		keys[i] = by ? acts_get(by)->keys[0].first : PRESS_NOTHING;
	}
	answer = editor->asker->choose(editor->asker, &question);
	if (answer != ANSWER_NONE)
		acts_run(editor, choices[answer].act);
}
