#include "editor/cards/service_card.h"
#include "editor/cards/card_ask.h"
#include "prices/in_force.h"
#include "takeoff/services/service_values.h"

#include <stdlib.h>

enum { NAME, KIND, STATE, FIELDS }; /* the block's follow */
enum { NEW_SERVICE = -1 };

static const struct value_rule kind_rule = { .kind = VALUE_CHOICE, .words = service_words };
static const struct value_rule state_rule = { .kind = VALUE_CHOICE, .words = service_states };

/* The card's owner. */
struct entering {
	struct editor *editor;
	struct plot plot; /* in force */
	int which; /* NEW_SERVICE: one that is not there yet */
	const struct service *service; /* as it is so far; points into the plot, or is a new one */
};

/* All that the card says, in a service without lines; its name and block are the caller's. */
static bool service_read(const struct card *card, struct service *out, struct fault *fault)
{
	const struct entering *entering = card->owner;
	const struct block_part whole = block_whole(BLOCK_SERVICE);
	struct value kind, state;

	if (!card_name_read(card, NAME, entering->service->name, &out->name, fault))
		return false;
	out->block = block_copy(&entering->service->block);
	if (card_read(card, KIND, &kind, fault) && card_read(card, STATE, &state, fault) &&
		block_fields_read(card, FIELDS, &out->block, &whole, fault)) {
		out->kind = (enum service_kind)kind.as.number;
		out->is_to_lay = state.as.number;
		return true;
	}
	free(out->name);
	block_fini(&out->block);
	return false;
}

static bool accept(struct card *card, struct fault *fault)
{
	const struct entering *entering = card->owner;
	struct service read = { .name = NULL }, *service;
	struct services *services;

	if (!service_read(card, &read, fault))
		return false;
	services = &editor_edit(entering->editor)->details.around.services;
	service = entering->which == NEW_SERVICE ?
		services_add(services, read.kind, read.is_to_lay, NULL) :
		&services->items[entering->which];
	free(service->name);
	block_fini(&service->block);
	read.routes = service->routes;
	*service = read;
	return true;
}

/* ---- What holds while it is unset ------------------------------------------------------------ */

static struct value length_value(nm length)
{
	return (struct value){ .set = true, .as.length = length };
}

/* What a service of that kind has where nothing is set; the caller's, for block_fini. */
static struct block usual_block(const struct plot *plot, enum service_kind kind, bool is_to_lay)
{
	const struct service plain = { .kind = kind, .is_to_lay = is_to_lay,
		.block.kind = BLOCK_SERVICE };
	struct block usual = { .kind = BLOCK_SERVICE };

	if (service_has_depth(&plain))
		block_set(&usual, SERVICE_DEPTH, length_value(service_depth(plot, &plain)));
	block_set(&usual, SERVICE_TRENCH, length_value(service_trench(plot, &plain)));
	return usual;
}

/* The usual depth and trench go by the kind, and by whether it is to be laid. */
static void changed(struct card *card, int field)
{
	const struct entering *entering = card->owner;
	struct block_part part = block_whole(BLOCK_SERVICE);
	struct fault fault = { .words = TEXT_EMPTY };
	struct value kind, state;
	struct block usual;

	if (field != KIND && field != STATE)
		return;
	if (card_read(card, KIND, &kind, &fault) && card_read(card, STATE, &state, &fault)) {
		usual = usual_block(&entering->plot, (enum service_kind)kind.as.number,
			state.as.number);
		part.held = &usual;
		block_fields_unset(card, FIELDS, &part);
		block_fini(&usual);
	}
	fault_fini(&fault);
}

/* ---- Asking ---------------------------------------------------------------------------------- */

static bool service_ask(struct editor *editor, int which, const struct service *service)
{
	struct entering entering = { editor, plot_in_force(&editor->words, editor->plot,
		editor->has_book ? &editor->book : NULL), which, service };
	struct block usual = usual_block(&entering.plot, service->kind, service->is_to_lay);
	struct block_part part = block_whole(BLOCK_SERVICE);
	bool is_new = which == NEW_SERVICE, is_taken;
	const struct field_spec fields[FIELDS] = {
		[NAME] = card_name("What it is and where it goes: Supply to the basin.",
			service->name),
		[KIND] = { .label = "Kind", .rule = &kind_rule, .required = true,
			.meaning = "What is in it. A drain takes water away.",
			.typed = service_words[service->kind] },
		[STATE] = { .label = "State", .rule = &state_rule, .required = true,
			.meaning = "Existing: it is in the ground. To-lay: it is to be laid.",
			.typed = service_states[service->is_to_lay] },
	};

	part.held = &usual;
	is_taken = card_ask(editor, &(struct card_spec){
		.title = is_new ? "A new service" : "A service",
		.done = is_new ? "add it" : "set all this", .fields = fields, .count = FIELDS,
		.block = &service->block, .part = part, .accept = accept,
		.changed = changed, .owner = &entering });
	block_fini(&usual);
	return is_taken;
}

bool service_card_change(struct editor *editor, int which)
{
	return service_ask(editor, which, &editor->plot->details.around.services.items[which]);
}

bool service_card_add(struct editor *editor)
{
	const struct service service = { .kind = SERVICE_WATER, .block.kind = BLOCK_SERVICE };

	return service_ask(editor, NEW_SERVICE, &service);
}
