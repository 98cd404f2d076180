# METADATA
# title: The visual inspection found damage that rejects a hose
# description: |
#   Exposed reinforcement, kinks, soft spots, blisters, leaks and damaged or slipping couplings come
#   before a burst. Evenly spaced pin-pricks in the cover of a gas hose are made on purpose and are no
#   damage.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: []
#   needs: [hoses.condition_stated]
#   message: "{part} was found {defects}"
#   action: "Take the hose out of use and mark it so. Replace it, or have it repaired and tested under pressure."
#   basis:
#     - document: 49 CFR 180.416
#       edition: "CFR 2015 annual edition"
#       clause: "(g)(1)"
#       standing: published
#     - document: 33 CFR 156.170
#       edition: "CFR 2015 annual edition"
#       clause: "(c)(1)"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.inspection.rejected_condition

report contains {"subject": h.id, "part": h.id, "defects": concat(", ", h.defects)} if {
	some h in input.hoses
	count(h.defects) > 0
}
