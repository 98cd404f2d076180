# METADATA
# title: An old hose has no stated service life
# description: |
#   A US defence guide replaces rubber hose twelve years after manufacture in ordinary use, and sooner
#   where a failure hurts. Metal and PTFE hose has no fixed life, but a yearly inspection and test.
# schemas:
#   - input: schema.facts
# custom:
#   severity: note
#   subject: hoses
#   scope: ["!life_stated"]
#   needs: [hoses.age_days]
#   message: "{part} is {have_days} old and no service life is stated; a guide replaces rubber hose at {need_days}"
#   action: "Ask the hose maker for a service life and write it in the line sheet."
#   basis:
#     - document: UFC 4-390-01
#       edition: "2003-07-23"
#       clause: "B.8"
#       standing: published
package rules.inspection.old_without_stated_life

report contains {"subject": h.id, "part": h.id, "have_days": h.age_days, "need_days": _longest_days} if {
	some h in input.hoses
	not h.life_stated
	h.age_days > _longest_days
}

# Twelve years hold three leap days.
_longest_days := 4383
