/* `parterre takeoff FILE [-o OUT] [--json | --csv] [--prices BOOK] [--force]` and
 * `parterre plan FILE [-o OUT] [--prices BOOK] [--force]`: the takeoff, and the plan as it is drawn
 * in it, without a screen. */
#ifndef REPORT_COMMAND_H
#define REPORT_COMMAND_H

/* argv[0] is "takeoff" or "plan". Returns the exit status: 0, or 2 after a message on standard
 * error. */
int command_report(int argc, char **argv);

#endif
