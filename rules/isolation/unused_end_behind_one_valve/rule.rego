# METADATA
# title: One valve alone closes an unused end on a dangerous fluid
# description: |
#   A valve that passes, or that somebody turns, opens the end. A cap, plug, blind flange or second
#   valve behind it is the custom, and US air rules for leaks ask for it on many lines.
# schemas:
#   - input: schema.facts
# custom:
#   severity: note
#   subject: closures
#   scope: [under_pressure, holds_hazard]
#   needs: []
#   absent: [closures.form]
#   message: "{point} is closed by one valve and nothing behind it"
#   action: "Fit a rated cap, plug or blind flange behind the valve."
#   basis:
#     - document: 40 CFR 60.482-6
#       edition: "not stated"
#       clause: "(a)"
#       standing: recalled
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.isolation.unused_end_behind_one_valve

report contains {"subject": c.id, "point": c.id} if {
	some c in input.closures
	c.under_pressure
	c.holds_hazard
	c.form == "valve"
}
