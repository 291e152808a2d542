#include "support/clerk.h"

#include "base/hash.h"
#include "base/memory.h"
#include "plot/format/format.h"
#include "support/golden.h"
#include "support/plots.h"
#include "support/scratch.h"

#include <check.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

/* Questions in one way through an act; bodies of questions and cards; lines of a plot. */
enum { DEPTH = 5, BODIES = 4096, LINES = 400, LONG_LIST = 6, ROWS_WRITTEN = 6 };

struct clerk {
	struct asker asker; /* first */
	struct editor editor;
	struct text plot, book, minutes;
	char *folder, *home;
	int answers[DEPTH], options[DEPTH], asked;
	uint64_t bodies[BODIES];
	int body_count;
};

/* ---- Answers --------------------------------------------------------------------------------- */

/* Of a card with more fields so many are changed, from the first to the last. */
enum { FIELDS_CHANGED = 5 };

static int fields_changed(const struct card *card)
{
	return card->count < FIELDS_CHANGED ? card->count : FIELDS_CHANGED;
}

/* Which one is the nth of them, from 0. */
static int field_changed(const struct card *card, int nth)
{
	int count = fields_changed(card);

	return count < 2 ? nth : nth * (card->count - 1) / (count - 1);
}

/* What is answered here in this way through the act, of so many answers; the last leaves. */
static int answer_next(struct clerk *c, int options)
{
	if (c->asked == DEPTH)
		return options - 1;
	c->options[c->asked] = options;
	return c->answers[c->asked++];
}

/* Goes on to the next way; false after the last. */
static bool next_way(struct clerk *c)
{
	for (int at = c->asked - 1; at >= 0; at--) {
		if (++c->answers[at] < c->options[at])
			return true;
		c->answers[at] = 0;
	}
	return false;
}

/* Whether this was met before; frees it. From now on it was. */
static bool is_known(struct clerk *c, struct text *body)
{
	uint64_t hash = hash_bytes(HASH_EMPTY, body->bytes, body->length);

	text_fini(body);
	for (int i = 0; i < c->body_count; i++)
		if (c->bodies[i] == hash)
			return true;
	ck_assert_int_lt(c->body_count, BODIES);
	c->bodies[c->body_count++] = hash;
	return false;
}

/* Writes a body that was not met before. */
static void body_write(struct clerk *c, struct text *body)
{
	size_t length = c->minutes.length;

	text_add_bytes(&c->minutes, body->bytes, body->length);
	if (is_known(c, body))
		text_cut(&c->minutes, length);
}

static int choose(struct asker *asker, const struct question *question)
{
	struct clerk *c = (struct clerk *)asker;
	struct text body = TEXT_EMPTY;
	int answer;

	for (int i = 0; i < question->count; i++)
		text_print(&body, "    %s%s | %s | %s\n", i == question->first ? "* " : "",
			question->answers[i], question->notes ? question->notes[i] : "",
			question->also ? question->also[i] : "");
	text_print(&c->minutes, "  ? %s", question->text);
	answer = c->asked && question->count > LONG_LIST ? question->count :
		answer_next(c, question->count + 1);
	if (answer == question->count)
		answer = ANSWER_NONE;
	text_print(&c->minutes, " > %s\n", answer == ANSWER_NONE ? "-" : question->answers[answer]);
	body_write(c, &body);
	return answer;
}

/* Other words for a field than those that stand there. */
static const char *other_words(const struct card *card, int field)
{
	const struct field *f = &card->fields[field];
	static char words[80];

	switch (f->rule->kind) {
	case VALUE_CHOICE:
		for (int i = 0; f->rule->words[i]; i++)
			if (strcmp(f->rule->words[i], f->typed) != 0)
				return f->rule->words[i];
		return "";
	case VALUE_LENGTH:
		return card->units == UNITS_METRIC ? "600 mm" : "2 ft";
	case VALUE_SIZE:
	case VALUE_CAP:
		return "2 ft x 1 ft x 6 in";
	case VALUE_PERCENT:
		return "12 %";
	case VALUE_PLACE:
		return "3,2";
	case VALUE_SIDES:
		return "left";
	case VALUE_AMOUNT:
		snprintf(words, sizeof words, "7 %s", card_unit(card, field));
		return words;
	case VALUE_MIX:
		return "topsoil 2, compost 1";
	case VALUE_TEXT:
		return f->is_cells ? "2 cells" : f->rule->most == 1 ? "z" : "Other words";
	case VALUE_COUNT:
	case VALUE_DECIMAL:
		break;
	}
	return "2";
}

/* What is said of words in a field, and the field as it was again. */
static void words_try(struct card *card, int field, const char *words, struct text *body)
{
	struct text said = TEXT_EMPTY;
	struct fault fault = { .words = TEXT_EMPTY };
	char *before = strdup(card->fields[field].typed);

	card_type(card, field, words);
	if (!card_settle(card, field, &said, &fault) || said.length)
		text_print(body, "      %s: %s\n", words, said.length ? said.bytes :
			fault.words.bytes);
	card_type(card, field, before);
	free(before);
	text_fini(&said);
	fault_fini(&fault);
}

static void card_write(struct clerk *c, struct card *card)
{
	static const char *const words[] = { "", "3", "900 m" };
	struct text body = TEXT_EMPTY, labels = TEXT_EMPTY;

	for (int i = 0; i < card->count; i++)
		text_print(&labels, "%s    %s", i ? "" : card->title, card->fields[i].label);
	if (is_known(c, &labels)) {
		for (int i = 0; i < card->count; i++)
			text_print(&body, "%s%s", i ? " | " : "    ", card->fields[i].typed);
		text_add(&body, "\n");
		body_write(c, &body);
		return;
	}
	text_print(&body, "    %s%s\n", card->done, card->has_end ? ", in a row of its own" : "");
	for (int i = 0; i < card->count; i++) {
		const struct field *f = &card->fields[i];

		text_print(&body, "    %s: %s (%s) %s\n", f->label, f->typed,
			f->unset ? f->unset : "-", f->meaning);
		for (size_t j = 0; j < sizeof words / sizeof *words; j++)
			words_try(card, i, words[j], &body);
	}
	body_write(c, &body);
}

/* Whether it is taken, with words in all fields that are asked for again while they are empty. */
static bool is_accepted(struct clerk *c, struct card *card, struct fault *fault)
{
	while (!card->accept(card, fault)) {
		text_print(&c->minutes, "  at %s: %s\n", card->fields[fault->field].label,
			fault->words.bytes);
		if (*card->fields[fault->field].typed)
			return false;
		card_type(card, fault->field, other_words(card, fault->field));
		fault_clear(fault);
	}
	return true;
}

/* The last field that does not take any words; -1 where all do. */
static int last_of_words(const struct card *card)
{
	int field = card->count - 1;

	while (field >= 0 && card->fields[field].rule->kind == VALUE_TEXT &&
		!card->fields[field].is_cells)
		field--;
	return field;
}

static bool fill(struct asker *asker, struct card *card)
{
	struct clerk *c = (struct clerk *)asker;
	struct fault fault = { .words = TEXT_EMPTY };
	int changed = fields_changed(card), wrong = last_of_words(card);
	int answer = answer_next(c, changed + 3);
	bool is_taken = false;

	text_print(&c->minutes, "  # %s", card->title);
	if (answer > 0 && answer <= changed) {
		int field = field_changed(card, answer - 1);
		const char *words = other_words(card, field);

		text_print(&c->minutes, " > %s: %s", card->fields[field].label, words);
		card_type(card, field, words);
		if (card->changed)
			card->changed(card, field);
	}
	if (answer == changed + 1 && wrong >= 0) {
		text_print(&c->minutes, " > %s: ?", card->fields[wrong].label);
		card_type(card, wrong, "?");
	}
	text_print(&c->minutes, "%s\n", answer == 0 ? " > as it stands" :
		answer > changed + 1 ? " > -" : "");
	if (answer == 0)
		card_write(c, card);
	if (answer <= changed + 1)
		is_taken = is_accepted(c, card, &fault);
	if (card->onward)
		*card->onward = (struct onward){ .goes_on = false };
	fault_fini(&fault);
	return is_taken;
}

static bool await(struct asker *asker, struct task *task)
{
	struct clerk *c = (struct clerk *)asker;

	text_print(&c->minutes, "  ... %s\n", task->words);
	return task->run(task);
}

static void say_pause(struct asker *asker)
{
	text_add(&((struct clerk *)asker)->minutes, "  pauses\n");
}

static void say_repaint(struct asker *asker)
{
	text_add(&((struct clerk *)asker)->minutes, "  repaints\n");
}

/* ---- What came of it ------------------------------------------------------------------------- */

static int lines_of(char *text, char **lines)
{
	int count = 0;

	for (char *line = strtok(text, "\n"); line; line = strtok(NULL, "\n")) {
		ck_assert_int_lt(count, LINES);
		lines[count++] = line;
	}
	return count;
}

/* A row of the ground: what was there before is seen in the plot. */
static bool is_row(const char *line)
{
	return strncmp(line, "  ", 2) == 0 && !strchr(line + 2, ' ');
}

static bool is_among(const char *line, char *const *lines, int count)
{
	for (int i = 0; i < count; i++)
		if (strcmp(lines[i], line) == 0)
			return true;
	return false;
}

/* Lines that went and lines that came, by the longest common run of others. */
static void difference_write(struct text *out, const char *old_text, const char *new_text,
	bool has_old)
{
	static int same[LINES + 1][LINES + 1];
	char *one = strdup(old_text), *other = strdup(new_text);
	char *a[LINES], *b[LINES];
	int i = 0, j = 0, rows = 0, a_count = lines_of(one, a), b_count = lines_of(other, b);

	for (int y = a_count; y >= 0; y--)
		for (int x = b_count; x >= 0; x--)
			same[y][x] = y == a_count || x == b_count ? 0 :
				strcmp(a[y], b[x]) == 0 ? same[y + 1][x + 1] + 1 :
				same[y + 1][x] > same[y][x + 1] ? same[y + 1][x] : same[y][x + 1];
	for (int y = 0; y < b_count; y++)
		rows += is_row(b[y]) && !is_among(b[y], a, a_count);
	if (rows > ROWS_WRITTEN)
		text_print(out, "  + %d rows of ground\n", rows);
	while (i < a_count || j < b_count)
		if (i < a_count && j < b_count && strcmp(a[i], b[j]) == 0) {
			i++;
			j++;
		} else if (j == b_count || (i < a_count && same[i + 1][j] >= same[i][j + 1])) {
			if (has_old && !is_row(a[i]))
				text_print(out, "  - %s\n", a[i]);
			i++;
		} else {
			if (rows <= ROWS_WRITTEN || !is_row(b[j]))
				text_print(out, "  + %s\n", b[j]);
			j++;
		}
	free(one);
	free(other);
}

/* What an editor has beside its plot, a line for each. */
static void state_write(const struct editor *e, struct text *out)
{
	static const char *const states[] = { "rest", "trail", "pegged", "marked" };

	text_print(out, "cursor %d,%d\nstate %s\nhand %c\n", e->cursor.x, e->cursor.y,
		states[editor_state(e)], e->hand);
	if (e->is_pegged)
		text_print(out, "peg %d,%d, %d bends\n", e->peg.x, e->peg.y, e->bend_count);
	if (e->is_marked)
		text_print(out, "marked %d,%d to %d,%d\ncarried %d x %d %.*s\n", e->marked.left,
			e->marked.top, e->marked.right, e->marked.bottom,
			e->carried.ground.columns, e->carried.ground.rows,
			e->carried.ground.columns * e->carried.ground.rows,
			e->carried.ground.cells);
	text_print(out, "step %d\nsteps %d\nframe %d\nrun %d\nfence %d\nservice %d\nlayer %d\n",
		e->step, e->steps, e->frame, e->run, e->fence, e->service, (int)e->layer);
	text_print(out, "zoom %d from %d,%d\npanel %d\npage %d from %d\nsnag %zu\n", e->view.zoom,
		e->view.first.x, e->view.first.y, (int)e->panel, e->page, e->page_top, e->snag);
	text_print(out, "measuring %d\npointing %d\nover %d\nsaved %d\nfile %s\nbook %s\n",
		e->is_measuring, e->is_pointing, e->is_over, editor_is_saved(e), e->name,
		e->book_name ? e->book_name : "-");
}

/* ---- Trying ---------------------------------------------------------------------------------- */

static void begin(struct clerk *c)
{
	struct plot plot;
	char path[4200];
	FILE *book;

	c->folder = scratch_new();
	snprintf(path, sizeof path, "%s/garden.plot", c->folder);
	ck_assert_int_eq(chdir(c->folder), 0); /* files of any name are written */
	book = fopen("book.json", "w");
	fputs(c->book.bytes, book);
	fclose(book);
	editor_init(&c->editor, &c->asker, path);
	plot_from_text(&plot, c->plot.bytes);
	editor_take(&c->editor, &plot, true);
	c->editor.has_begun = true;
	c->editor.view.rows = 8;
	c->editor.view.columns = 24;
	c->editor.page_rows = 10;
}

static void end(struct clerk *c)
{
	store_forget(&c->editor.store);
	editor_fini(&c->editor);
	ck_assert_int_eq(chdir(c->home), 0);
	scratch_remove(c->folder);
}

static void count(struct editor *editor)
{
	editor_draw(editor);
	ck_assert(editor_refresh(editor));
}

/* One way through an act. */
static void go(struct clerk *c, void (*prepare)(struct editor *editor), enum act_id act, int key)
{
	struct editor *e = &c->editor;
	struct text before = TEXT_EMPTY, after = TEXT_EMPTY, was = TEXT_EMPTY, is = TEXT_EMPTY;

	begin(c);
	if (prepare)
		prepare(e);
	if (act < ACT_CARDS)
		count(e);
	state_write(e, &before);
	format_write(e->plot, &was);
	c->asked = 0;
	if (key == PRESS_NOTHING)
		acts_do(e, act);
	else
		acts_press(e, key);
	if (e->message.length)
		text_print(&c->minutes, "  ! %s\n", e->message.bytes);
	state_write(e, &after);
	format_write(e->plot, &is);
	difference_write(&c->minutes, before.bytes, after.bytes, false);
	difference_write(&c->minutes, was.bytes, is.bytes, true);
	text_fini(&before);
	text_fini(&after);
	text_fini(&was);
	text_fini(&is);
	end(c);
}

void clerk_try(struct clerk *c, const char *where, void (*prepare)(struct editor *editor),
	enum act_id act, int key, int most)
{
	struct text before = c->minutes, tried;
	int ways = 0;

	c->minutes = TEXT_EMPTY;
	memset(c->answers, 0, sizeof c->answers);
	do
		go(c, prepare, act, key);
	while (next_way(c) && ++ways < most);
	tried = c->minutes;
	c->minutes = before;
	text_print(&c->minutes, "\n%s: ", where);
	if (key == PRESS_NOTHING)
		text_print(&c->minutes, "%s\n", acts_get(act)->name);
	else
		text_print(&c->minutes, key < PRESS_FIRST ? "key %c\n" : "key %d\n",
			key < PRESS_FIRST ? key : key - PRESS_FIRST);
	body_write(c, &tried);
}

struct clerk *clerk_new(const char *path)
{
	struct clerk *c = calloc(1, sizeof *c);
	struct file_error error;

	c->asker = (struct asker){ choose, fill, await, say_pause, say_repaint };
	c->home = getcwd(NULL, 0);
	ck_assert(file_read(path, 1 << 20, &c->plot, &error));
	ck_assert(file_read("plots/prices.json", 1 << 20, &c->book, &error));
	return c;
}

/* The minutes without the names of folders, which are others each time. */
static void folders_cut(struct text *minutes)
{
	struct text cut = TEXT_EMPTY;
	const char *at = minutes->bytes, *found;

	while ((found = strchr(at, '/'))) {
		size_t length = strcspn(found, " \n:;,)\"");
		const char *last = found + length;

		while (last > found && *last != '/')
			last--;
		text_add_bytes(&cut, at, (size_t)(found - at));
		if (last > found && (found == minutes->bytes || strchr(" \n(", found[-1]))) {
			text_add(&cut, "FOLDER");
			at = last;
		} else {
			text_add(&cut, "/");
			at = found + 1;
		}
	}
	text_add(&cut, at);
	text_fini(minutes);
	*minutes = cut;
}

void clerk_check(struct clerk *c, const char *golden)
{
	folders_cut(&c->minutes);
	golden_check(golden, c->minutes.bytes);
	text_fini(&c->minutes);
	text_fini(&c->plot);
	text_fini(&c->book);
	free(c->home);
	free(c);
}
