# METADATA
# title: Burst or test pressure stands on a marine hose
# description: |
#   The US rule for oil and hazardous material between vessel and shore wants these two in the
#   records and not on the hose, where somebody takes them for the working pressure.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=33 CFR 154.500"]
#   needs: [hoses.marked_burst_or_test]
#   message: "{part} shows a burst or test pressure"
#   action: >-
#     Have the marking taken off or made unreadable by who maintains the hose, and keep the figure in
#     the records.
#   basis:
#     - document: 33 CFR 154.500
#       edition: "CFR 2015 annual edition"
#       clause: "(g)"
#       standing: published
package rules.marking.burst_marked_against_marine_law

report contains {"subject": h.id, "part": h.id} if {
	"33 CFR 154.500" in input.line.regimes
	some h in input.hoses
	h.marked_burst_or_test == true
}
