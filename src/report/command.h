/* `parterre takeoff FILE [-o OUT] [--json | --csv] [--prices BOOK] [--force]`: the takeoff without
 * a screen. */
#ifndef REPORT_COMMAND_H
#define REPORT_COMMAND_H

/* argv[0] is "takeoff". Returns the exit status: 0, or 2 after a message on standard error. */
int command_takeoff(int argc, char **argv);

#endif
