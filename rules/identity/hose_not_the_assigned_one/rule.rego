# METADATA
# title: The hose at hand is not the one the line was approved with
# description: |
#   In a published accident a hose built for another gas had been swapped in from another trailer.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [assigned_stated]
#   needs: [hoses.tag_matches]
#   message: "The identity read on {part} is not that of the hose approved for this line"
#   action: "Fetch the assigned hose, or have this one judged and approved as a change."
#   basis:
#     - document: NTSB HAZ-12-01-SUM
#       edition: ""
#       clause: "letters H-12-2 to H-12-6"
#       standing: published
#     - document: 49 CFR 180.416
#       edition: "CFR 2015 annual edition"
#       clause: "(b)"
#       standing: published
package rules.identity.hose_not_the_assigned_one

report contains {"subject": h.id, "part": h.id} if {
	some h in input.hoses
	h.assigned_stated
	h.tag_matches == false
}
