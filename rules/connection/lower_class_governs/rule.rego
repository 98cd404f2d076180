# METADATA
# title: Flanges of different class share one drilling, so the lower governs
# description: |
#   Some classes share their bolt pattern, for instance PN 10 to PN 40 up to DN 80. The joint looks
#   right, but it holds only what the weaker flange holds.
# schemas:
#   - input: schema.facts
# custom:
#   severity: note
#   subject: joints
#   scope: ["!open_point"]
#   needs: [joints.class]
#   message: >-
#     {a} and {b} have different pressure classes with the same drilling; the lower class governs the
#     joint
#   action: >-
#     Read the stamp on both flanges and take the lower rating, with its bolting and gasket, for the whole
#     joint.
#   basis:
#     - document: ASME B16.5
#       edition: ""
#       clause: "clause 2"
#       standing: recalled
#     - document: EN 1092-1
#       edition: ""
#       clause: "drilling of PN 10 to PN 40 compared"
#       standing: computed
package rules.connection.lower_class_governs

report contains {"subject": j.id, "a": j.a, "b": j.b} if {
	some j in input.joints
	not j.open_point
	j.class == "drilling-same"
}
