#include "editor/cards/fence_card.h"
#include "base/memory.h"
#include "plot/edit/fence_lay.h"
#include "editor/cards/named_card.h"

#include <stdlib.h>
#include <string.h>

enum { NEW_FENCE = -1 };

struct entering {
	struct named_card named; /* first */
	int fence; /* NEW_FENCE: one that is not there yet */
};

static void take(struct named_card *named, char letter, char *name, const struct block *block)
{
	const struct entering *entering = (struct entering *)named;
	struct details *details = &editor_edit(named->editor)->details;
	struct fence *fence = entering->fence == NEW_FENCE ? details_add_fence(details, NULL) :
		&details->fences[entering->fence];

	(void)letter;
	free(fence->name);
	fence->name = name;
	block_fini(&fence->block);
	fence->block = *block;
}

void fence_card_begin(struct editor *editor)
{
	details_add_fence(&editor_edit(editor)->details, memory_string("Fence"));
}

bool fence_card_change(struct editor *editor, int which)
{
	const struct fence *fence = &editor->plot->details.fences[which];
	struct entering entering = { .fence = which, .named = { .editor = editor,
		.title = "A fence", .kind = BLOCK_FENCE, .name = fence->name,
		.block = &fence->block, .take = take } };

	return named_card_ask(&entering.named);
}

bool fence_card_add(struct editor *editor)
{
	struct entering entering = { .fence = NEW_FENCE, .named = { .editor = editor,
		.title = "A new fence", .kind = BLOCK_FENCE, .take = take } };

	if (!named_card_ask(&entering.named))
		return false;
	editor->fence = (int)editor->plot->details.fence_count - 1;
	return true;
}

/* Which, with its length beside it. */
static int fence_ask(struct editor *editor)
{
	const struct details *details = &editor->plot->details;
	struct arena arena = ARENA_EMPTY;
	struct report report = editor_report(editor, &arena);
	const char **answers = arena_new(&arena, details->fence_count, sizeof *answers);
	const char **notes = arena_new(&arena, details->fence_count, sizeof *notes);
	struct question question = { .text = "Remove which fence, with all of it on the plan?",
		.answers = answers, .notes = notes, .count = (int)details->fence_count };
	int answer;

	for (size_t i = 0; i < details->fence_count; i++) {
		answers[i] = details->fences[i].name;
		notes[i] = plain_sides(&report, fence_length(&details->fences[i]));
	}
	answer = editor->asker->choose(editor->asker, &question);
	arena_clear(&arena);
	return answer;
}

bool fence_card_remove(struct editor *editor)
{
	int fence = fence_ask(editor);
	struct details *details;

	if (fence == ANSWER_NONE)
		return false;
	details = &editor_edit(editor)->details;
	fence_fini(&details->fences[fence]);
	details->fence_count--;
	memmove(&details->fences[fence], &details->fences[fence + 1],
		(details->fence_count - (size_t)fence) * sizeof *details->fences);
	return true;
}
