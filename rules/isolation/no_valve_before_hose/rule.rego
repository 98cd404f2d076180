# METADATA
# title: The sheet shows no valve between the source and a hose of liquefied gas
# description: |
#   If the hose fails, something before it has to close. A valve on the vessel counts only if somebody
#   knows that it is there.
# schemas:
#   - input: schema.facts
# custom:
#   severity: note
#   subject: hoses
#   scope: [carries_liquefied_gas]
#   needs: []
#   message: "No valve, excess-flow valve or breakaway is shown before {part}"
#   action: "Enter the valve on the vessel as a part of the run, or fit one."
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(12)(vii)"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.isolation.no_valve_before_hose

report contains {"subject": h.id, "part": h.id} if {
	some h in input.hoses
	h.carries_liquefied_gas
	some i, hose in input.parts
	hose.id == h.id
	count({p.id | some k, p in input.parts; k < i; p.run == h.run; p.kind in _closing}) == 0
}

_closing := {"breakaway", "excess-flow", "regulator", "valve"}
